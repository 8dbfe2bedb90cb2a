namespace FlowCalc.Agents;

/// <summary>Properties that the user gave: the same at every temperature above absolute zero.</summary>
internal sealed class ConstantProperties(double density, double viscosity) : ILiquidProperties
{
    public double LowestTemperature => 0;

    public double HighestTemperature => double.PositiveInfinity;

    public double Density(double temperature) => density;

    public double Viscosity(double temperature) => viscosity;

    public double VapourPressure(double temperature) => 0;
}
