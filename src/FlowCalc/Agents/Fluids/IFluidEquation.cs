namespace FlowCalc.Agents;

/// <summary>A fundamental equation of a pure fluid or of a blend of fixed composition.</summary>
internal interface IFluidEquation
{
    /// <summary>All properties of a state of one phase.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    /// <param name="density">Density, kg/m³, over 0.</param>
    HelmholtzState At(double temperature, double density);

    /// <summary>Specific gas constant, J/(kg·K).</summary>
    double GasConstant { get; }

    /// <summary>Temperature that reduces τ, K.</summary>
    double ReducingTemperature { get; }

    /// <summary>Density that reduces δ, kg/m³.</summary>
    double ReducingDensity { get; }

    /// <summary>αʳ and its derivatives.</summary>
    /// <param name="density">δ, over 0.</param>
    /// <param name="temperature">τ, over 0.</param>
    HelmholtzDerivatives Residual(double density, double temperature);

    /// <summary>α° without ln δ, and its derivatives by τ.</summary>
    /// <param name="temperature">τ, over 0.</param>
    HelmholtzDerivatives Ideal(double temperature);
}
