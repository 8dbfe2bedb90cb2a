namespace FlowCalc.Agents;

/// <summary>An ideal gas of constant heat capacity.</summary>
/// <param name="gasConstant">Specific gas constant, J/(kg·K), over 0.</param>
/// <param name="heatCapacityRatio">cp/cv, over 1.</param>
public sealed class IdealGas(double gasConstant, double heatCapacityRatio) : IGas
{
    /// <inheritdoc/>
    public double GasConstant => gasConstant;

    /// <inheritdoc/>
    public GasPoint At(double temperature, double density) =>
        new(density * gasConstant * temperature, density * gasConstant, gasConstant / (heatCapacityRatio - 1));

    /// <inheritdoc/>
    public double IdealHeatCapacityRatio(double temperature) => heatCapacityRatio;
}
