namespace FlowCalc.Agents;

/// <summary>One solution of a mixture: the correlation at a fixed mass fraction, from its freezing point up.</summary>
internal sealed class MixtureProperties(MixtureCorrelation correlation, double massFraction) : ILiquidProperties
{
    public double LowestTemperature { get; } = correlation.FreezingPoint(massFraction);

    public double HighestTemperature => correlation.HighestTemperature;

    public double Density(double temperature) => correlation.Density(massFraction, temperature);

    public double Viscosity(double temperature) => correlation.Viscosity(massFraction, temperature);

    /// <summary>Of pure water: what is dissolved lowers it, so this bounds it from above.</summary>
    public double VapourPressure(double temperature) => WaterProperties.Instance.VapourPressure(temperature);
}
