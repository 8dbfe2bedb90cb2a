using FlowCalc.Networks;
using MathNet.Numerics.RootFinding;

namespace FlowCalc.Tests.Networks;

/// <summary>A flashing liquid of the law v/v0 = 1 + ω(p0/p − 1) in tubes and nozzles (Leung 1986, from memory).</summary>
internal readonly struct OmegaPath(double density, double omega, double start, double ambient, double top, bool hasHeads) : ICompressiblePath
{
    public double ReferenceDensity => density;

    public double LogTop => Math.Log(top) + 0.05;

    public double LogLow => Math.Log(0.2 * ambient);

    public double LogAmbient => Math.Log(ambient);

    public bool HasHeads => hasHeads;

    public PathPoint At(double log)
    {
        var pressure = Math.Exp(log);
        return new((Integral(pressure) - Integral(ambient)), Work(pressure) - Work(ambient), 1 / Volume(pressure), pressure * Volume(pressure), omega * start / pressure / (density * Volume(pressure)));
    }

    public double LogOf(double potential, double guess)
    {
        var log = guess;
        for (var i = 0; i < 100; i++)
        {
            var at = At(log);
            var step = (potential - at.Potential) * ReferenceDensity / (at.Density * Math.Exp(log));
            log += Math.Clamp(step, -0.5, 0.5);
            if (Math.Abs(step) < 1e-14) break;
        }
        return log;
    }

    public double ChokingLog(double flux) => Math.Log(Math.Max(flux * Math.Sqrt(omega * start / density), Math.Exp(LogLow)));

    public (double Flux, double Slope) Nozzle(double log) => (Flux(log), (Flux(log + 1e-5) - Flux(log - 1e-5)) / 2e-5);

    public double Viscosity(double log) => 1e-4;

    // ∫ρ dp / ρ0 with ρ = ρ0·p / ((1 − ω)·p + ω·p0).
    double Integral(double pressure)
    {
        var (a, b) = (1 - omega, omega * start);
        return pressure / a - b / (a * a) * Math.Log(a * pressure + b);
    }

    double Work(double pressure) => ((1 - omega) * pressure + omega * start * Math.Log(pressure)) / density;

    double Volume(double pressure) => (1 + omega * (start / pressure - 1)) / density;

    double Flux(double log)
    {
        var pressure = Math.Exp(log);
        if (pressure <= ambient) return 0;
        var w = omega * start / pressure / (density * Volume(pressure));
        var choke = Brent.FindRoot(
            x => x * x + (w * w - 2 * w) * (1 - x) * (1 - x) + 2 * w * w * Math.Log(x) + 2 * w * w * (1 - x), 0.01, 1, 1e-14);
        var throat = Math.Max(choke * pressure, ambient);
        return Math.Sqrt(2 * (Work(pressure) - Work(throat))) / Volume(throat);
    }
}
