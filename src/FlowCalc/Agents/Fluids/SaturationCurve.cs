using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FlowCalc.Agents;

/// <summary>The fast form of saturation: cubic pieces with exact slopes, uniform in u = √(1 − T/Tc), which crowds them near the critical point, and in ln p for the way back.</summary>
/// <remarks>
/// Against the equation at midpoints, all fluids, 180 K or the triple point to 0.995 of the critical temperature: pressure and densities within 3e-6, enthalpies within 0.1 J/kg
/// (measured by the tests). Beyond 0.9995 of the critical temperature nothing is told.
/// </remarks>
internal sealed class SaturationCurve
{
    const int Pieces = 128;
    const int LogPieces = 512;

    // Seven and one left over: two hardware vectors.
    const int Quantities = 8;
    const double HighestPart = 0.9995;

    // Colder than any bottle or nozzle gets, and above where vapour pressures are too small to matter.
    const double ColdEnough = 170;

    readonly double criticalTemperature, firstRoot, rootStep, firstLog, logStep;

    // Of each node the seven quantities and then their slopes by u, times the step.
    readonly double[] nodes = new double[(Pieces + 1) * 2 * Quantities];
    readonly double[] temperatures = new double[(LogPieces + 1) * 2];

    /// <summary>Builds the curve of a fluid, in some 20 ms.</summary>
    /// <param name="equation">Its equation.</param>
    /// <param name="exact">Its equilibrium.</param>
    public SaturationCurve(HelmholtzEquation equation, Saturation exact)
    {
        criticalTemperature = equation.ReducingTemperature;
        LowestTemperature = Math.Max(equation.LowestTemperature, ColdEnough);
        HighestTemperature = HighestPart * criticalTemperature;
        (firstRoot, var lastRoot) = (Root(HighestTemperature), Root(LowestTemperature));
        rootStep = (lastRoot - firstRoot) / Pieces;
        for (var i = 0; i <= Pieces; i++) Fill(equation, exact, i);
        (LowestPressure, HighestPressure) = (exact.At(LowestTemperature).Pressure, exact.At(HighestTemperature).Pressure);
        (firstLog, logStep) = (Math.Log(LowestPressure), Math.Log(HighestPressure / LowestPressure) / LogPieces);
        FillTemperatures();
    }

    /// <summary>Lowest temperature, K.</summary>
    public double LowestTemperature { get; }

    /// <summary>Highest temperature, K.</summary>
    public double HighestTemperature { get; }

    /// <summary>Pressure at the lowest temperature, Pa.</summary>
    public double LowestPressure { get; }

    /// <summary>Pressure at the highest temperature, Pa.</summary>
    public double HighestPressure { get; }

    /// <summary>The phases at a temperature; NaN throughout outside the range.</summary>
    /// <param name="temperature">Temperature, K.</param>
    public SaturatedPoint AtTemperature(double temperature) =>
        temperature >= LowestTemperature && temperature <= HighestTemperature ? At(temperature) : Nothing;

    /// <summary>The phases at a pressure; NaN throughout outside the range.</summary>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    public SaturatedPoint AtPressure(double pressure) =>
        pressure >= LowestPressure && pressure <= HighestPressure ? At(Temperature(pressure), pressure) : Nothing;

    /// <summary>Temperature at a pressure, K; beyond the range the outermost piece goes on.</summary>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    public double Temperature(double pressure)
    {
        var x = (Math.Log(pressure) - firstLog) / logStep;
        var i = (int)Math.Clamp(x, 0, LogPieces - 1);
        var u = x - i;
        var rest = 1 - u;
        var node = temperatures.AsSpan(2 * i, 4);
        return rest * rest * ((1 + 2 * u) * node[0] + u * node[1]) + u * u * ((3 - 2 * u) * node[2] - rest * node[3]);
    }

    static SaturatedPoint Nothing => new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);

    SaturatedPoint At(double temperature, double? pressure = null)
    {
        var x = (Root(temperature) - firstRoot) / rootStep;
        var i = (int)Math.Clamp(x, 0, Pieces - 1);
        var u = x - i;
        var rest = 1 - u;
        var (a, b, c, d) = (rest * rest * (1 + 2 * u), rest * rest * u, u * u * (3 - 2 * u), -u * u * rest);
        var left = MemoryMarshal.Cast<double, Vector256<double>>(nodes.AsSpan(2 * Quantities * i, 4 * Quantities));
        var (first, second) = (a * left[0] + b * left[2] + c * left[4] + d * left[6], a * left[1] + b * left[3] + c * left[5] + d * left[7]);
        return new(temperature, pressure ?? Math.Exp(first[0]), first[1], Math.Exp(first[2]), first[3], second[0], second[1], second[2]);
    }

    double Root(double temperature) => Math.Sqrt(1 - temperature / criticalTemperature);

    void Fill(HelmholtzEquation equation, Saturation exact, int node)
    {
        var root = firstRoot + node * rootStep;
        var temperature = criticalTemperature * (1 - root * root);
        var perRoot = -2 * criticalTemperature * root * rootStep;
        var point = exact.At(temperature);
        var perKelvin = PressurePerKelvin(point);
        var (liquid, vapour) = (equation.At(temperature, point.LiquidDensity), equation.At(temperature, point.VapourDensity));
        var at = nodes.AsSpan(2 * Quantities * node, 2 * Quantities);
        ReadOnlySpan<double> values =
        [
            Math.Log(point.Pressure), point.LiquidDensity, Math.Log(point.VapourDensity),
            point.LiquidEnthalpy, point.VapourEnthalpy, point.LiquidEntropy, point.VapourEntropy,
        ];
        values.CopyTo(at);
        at[Quantities] = perRoot * perKelvin / point.Pressure;
        (at[Quantities + 1], at[Quantities + 3], at[Quantities + 5]) = Slopes(liquid, temperature, point.LiquidDensity, perKelvin, perRoot);
        (at[Quantities + 2], at[Quantities + 4], at[Quantities + 6]) = Slopes(vapour, temperature, point.VapourDensity, perKelvin, perRoot);
        at[Quantities + 2] /= point.VapourDensity;
    }

    // Clapeyron.
    static double PressurePerKelvin(in SaturatedPoint point) => point.Latent / (point.Temperature * (1 / point.VapourDensity - 1 / point.LiquidDensity));

    static (double Density, double Enthalpy, double Entropy) Slopes(in HelmholtzState state, double temperature, double density, double perKelvin, double perRoot)
    {
        var volumePerKelvin = state.PressurePerKelvin / (density * density * state.PressurePerDensity);
        return (
            perRoot * (perKelvin - state.PressurePerKelvin) / state.PressurePerDensity,
            perRoot * (state.IsobaricHeatCapacity + (1 / density - temperature * volumePerKelvin) * perKelvin),
            perRoot * (state.IsobaricHeatCapacity / temperature - volumePerKelvin * perKelvin));
    }

    // The way back is that of the curve itself, so that the two agree.
    void FillTemperatures()
    {
        var temperature = LowestTemperature;
        for (var i = 0; i <= LogPieces; i++)
        {
            var target = firstLog + i * logStep;
            var point = At(temperature);
            for (var k = 0; k < 20; k++)
            {
                var step = (target - Math.Log(point.Pressure)) * point.Pressure / PressurePerKelvin(point);
                temperature = Math.Min(temperature + step, HighestTemperature);
                point = At(temperature);
                if (Math.Abs(step) < 1e-10) break;
            }
            (temperatures[2 * i], temperatures[2 * i + 1]) = (temperature, logStep * point.Pressure / PressurePerKelvin(point));
            temperature = Math.Min(temperature + temperatures[2 * i + 1], HighestTemperature);
        }
    }
}
