using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>An ideal gas at constant temperature in the tubes, isentropic in the nozzles.</summary>
internal readonly struct IsothermalPath(double gasConstant, double temperature, double ratio, double ambient, double top, bool hasHeads) : ICompressiblePath
{
    readonly double rt = gasConstant * temperature;

    public double ReferenceDensity => top / rt;

    public double LogTop => Math.Log(top) + 0.1;

    public double LogLow => Math.Log(0.2 * ambient);

    public double LogAmbient => Math.Log(ambient);

    public bool HasHeads => hasHeads;

    public PathPoint At(double log)
    {
        var pressure = Math.Exp(log);
        return new((pressure * pressure - ambient * ambient) / (2 * top), rt * (log - LogAmbient), pressure / rt, rt, 1);
    }

    public double LogOf(double potential, double guess) => 0.5 * Math.Log(Math.Max(2 * top * potential + ambient * ambient, 1e-6));

    public double ChokingLog(double flux) => Math.Log(Math.Max(flux * Math.Sqrt(rt), Math.Exp(LogLow)));

    public (double Flux, double Slope) Nozzle(double log) => (Flux(log), (Flux(log + 1e-6) - Flux(log - 1e-6)) / 2e-6);

    public double Viscosity(double log) => 1.8e-5;

    double Flux(double log)
    {
        var pressure = Math.Exp(log);
        var critical = Math.Pow(2 / (ratio + 1), ratio / (ratio - 1));
        var r = Math.Max(ambient / pressure, critical);
        if (r >= 1) return 0;
        return pressure / Math.Sqrt(rt) * Math.Sqrt(2 * ratio / (ratio - 1) * (Math.Pow(r, 2 / ratio) - Math.Pow(r, (ratio + 1) / ratio)));
    }
}
