using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>An ideal gas at constant temperature, slow enough for its kinetic energy not to count, with a law of nozzles that can be inverted.</summary>
internal readonly struct IsothermalGas(double gasConstantTimesTemperature, double viscosity, double ambientPressure) : IExpansionPath
{
    public double ReferenceDensity => ambientPressure / gasConstantTimesTemperature;

    public double Viscosity => viscosity;

    public double AmbientPotential => Potential(ambientPressure);

    // ∫ρ dp / ρ0 = p² / (2 RT ρ0) = p² / (2 p_a)
    public double Potential(double pressure) => pressure * pressure / (2 * ambientPressure);

    public double Pressure(double potential) => Math.Sqrt(2 * ambientPressure * Math.Max(potential, 0));

    public double Weight(double potential)
    {
        var density = Pressure(potential) / gasConstantTimesTemperature;
        return density * density * 9.80665 / ReferenceDensity;
    }

    // A choked nozzle of fixed flux per pressure: m = area · p / √(RT).
    public NozzleTangent Nozzle(int point, double potential, double flow, double area)
    {
        var pressure = Pressure(potential);
        var slope = area / Math.Sqrt(gasConstantTimesTemperature) * ambientPressure / pressure;
        return new(slope, 1, slope * potential - area / Math.Sqrt(gasConstantTimesTemperature) * pressure);
    }
}
