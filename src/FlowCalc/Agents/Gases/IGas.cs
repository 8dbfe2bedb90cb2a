namespace FlowCalc.Agents;

/// <summary>A gas in one phase, by temperature and density.</summary>
public interface IGas
{
    /// <summary>Specific gas constant, J/(kg·K).</summary>
    double GasConstant { get; }

    /// <summary>State at a temperature and density.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="density">Density, kg/m³.</param>
    GasPoint At(double temperature, double density);

    /// <summary>cp/cv of the dilute gas.</summary>
    /// <param name="temperature">Temperature, K.</param>
    double IdealHeatCapacityRatio(double temperature);
}
