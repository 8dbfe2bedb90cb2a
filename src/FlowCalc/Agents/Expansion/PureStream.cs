using MathNet.Numerics.RootFinding;

namespace FlowCalc.Agents;

/// <summary>A pure fluid or a blend of gases: one phase, or liquid and vapour in equilibrium. For one thread: it starts each search from its last answer.</summary>
/// <remarks>
/// Below the lowest pressure of the saturation curve (for carbon dioxide its triple point, below which it would turn solid; no solid is modelled) liquid and vapour
/// keep their parts and the density of what holds vapour falls with the pressure, so that a way to the surroundings exists; the discharge tells of it.
/// </remarks>
internal sealed class PureStream : IStream
{
    // Between so many pressures a phase boundary is looked for.
    const int Scan = 48;

    const double Above = 1.05;
    const double Hair = 1e-6;

    // A liquid under less than this over its bubble pressure keeps its density.
    const double Slightly = 1.3;

    // Over this part of the highest pressure of saturation liquid and vapour become one, and with them a frozen expansion and equilibrium.
    const double Distinct = 0.85;

    // A gas thinner than this part of its critical density has a density almost in proportion to the pressure.
    const double Thin = 0.3;

    readonly Fluid fluid;
    readonly SaturationCurve? saturation;
    readonly double enthalpy;
    readonly SaturatedPoint bubble;
    readonly (double Temperature, double Density, double Pressure) first;
    double temperature, density, last;

    /// <summary>Makes the stream of a state.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <param name="pressure">Highest absolute pressure of the way, Pa.</param>
    /// <param name="enthalpy">Total enthalpy, J/kg.</param>
    /// <param name="temperature">Temperature at that pressure, K, where searches in one phase start.</param>
    /// <param name="density">Density at that pressure, kg/m³.</param>
    /// <param name="lowest">Lowest absolute pressure of the way, Pa.</param>
    public PureStream(Fluid fluid, double pressure, double enthalpy, double temperature, double density, double lowest)
    {
        (this.fluid, saturation, this.enthalpy, this.temperature, this.density) = (fluid, fluid.Saturation, enthalpy, temperature, density);
        first = (temperature, density, pressure);
        last = pressure;
        // A little above the start, since a table reaches there and a saturated liquid stands right on its boundary.
        Kink = FindKink(lowest, Above * pressure);
        IsSlightlyCompressed = !double.IsNaN(Kink) && pressure < Slightly * Kink && VapourPart(Kink * 0.999) is > 0 and < 0.5;
        if (IsSlightlyCompressed) bubble = saturation!.AtPressure(Kink);
    }

    /// <inheritdoc/>
    public double Kink { get; }

    /// <inheritdoc/>
    public double Floor => saturation?.LowestPressure ?? double.NaN;

    bool IsSlightlyCompressed { get; }

    /// <inheritdoc/>
    public StreamState At(double pressure)
    {
        if (pressure < saturation?.LowestPressure)
        {
            var last = At(saturation.LowestPressure);
            return last.GasPart == 0 ? last : last with { Density = last.Density * pressure / saturation.LowestPressure };
        }
        if (IsSlightlyCompressed && pressure >= Kink) return new(bubble.LiquidDensity, bubble.Temperature, 0, fluid.LiquidViscosity(bubble.Temperature));
        if (Inside(pressure) is >= 0 and var part)
        {
            var point = saturation!.AtPressure(pressure);
            var volume = part / point.VapourDensity + (1 - part) / point.LiquidDensity;
            return new(1 / volume, point.Temperature, part, 1 / (part / fluid.GasViscosity(point.Temperature) + (1 - part) / fluid.LiquidViscosity(point.Temperature)));
        }
        AtEnthalpy(pressure);
        if (double.IsNaN(density)) return Edge(pressure);
        var isLiquid = saturation is not null && density > fluid.CriticalDensity;
        var (t, d) = (temperature, density);
        return new(d, t, isLiquid ? 0 : 1, isLiquid ? fluid.LiquidViscosity(t) : fluid.GasViscosity(t));
    }

    // One phase, from the last one. Gives its entropy.
    double AtEnthalpy(double pressure)
    {
        if (saturation is null || density < Thin * fluid.CriticalDensity) density *= pressure / last;
        last = pressure;
        return OnePhase.AtEnthalpy(fluid, pressure, enthalpy, ref temperature, ref density);
    }

    // One phase without an answer, a little beyond the boundary: the saturated phase of that side.
    StreamState Edge(double pressure)
    {
        (temperature, density, last) = first;
        if (!(pressure <= saturation?.HighestPressure)) return new(double.NaN, double.NaN, double.NaN, double.NaN);
        var point = saturation.AtPressure(pressure);
        return VapourPart(pressure) < 0
            ? new(point.LiquidDensity, point.Temperature, 0, fluid.LiquidViscosity(point.Temperature))
            : new(point.VapourDensity, point.Temperature, 1, fluid.GasViscosity(point.Temperature));
    }

    /// <inheritdoc/>
    public INozzleWay Nozzle(double stagnation)
    {
        if (saturation is not null && stagnation < saturation.LowestPressure)
        {
            var end = saturation.LowestPressure * (1 + Hair);
            return new ScaledWay(Nozzle(end), end / stagnation);
        }
        if (IsSlightlyCompressed && stagnation >= Kink)
            return new PureNozzleWay(fluid, stagnation, enthalpy, bubble.LiquidEntropy, 0, bubble, isLiquid: true, bubble.Temperature, bubble.LiquidDensity);
        if (Inside(stagnation) is >= 0 and var part)
        {
            var point = saturation!.AtPressure(stagnation);
            return new PureNozzleWay(
                fluid, stagnation, enthalpy, point.LiquidEntropy + part * (point.VapourEntropy - point.LiquidEntropy), part, point, isLiquid: false, point.Temperature,
                1 / (part / point.VapourDensity + (1 - part) / point.LiquidDensity), part * Math.Clamp((stagnation / saturation.HighestPressure - Distinct) / (1 - Distinct), 0, 1));
        }
        var entropy = AtEnthalpy(stagnation);
        if (double.IsNaN(density)) return new HeldWay(1 / At(stagnation).Density, stagnation);
        return Boiling(entropy) is var (boiling, critical)
            ? new PureNozzleWay(fluid, stagnation, enthalpy, entropy, 0, boiling, isLiquid: false, temperature, density, critical)
            : new PureNozzleWay(fluid, stagnation, enthalpy, entropy, double.NaN, default, isLiquid: false, temperature, density);
    }

    // Where a dense fluid comes to boil at constant entropy, and how near to the critical point; null where it stays one phase or comes out as vapour.
    (SaturatedPoint Point, double Critical)? Boiling(double entropy)
    {
        if (saturation is null) return null;
        var last = saturation.AtPressure(saturation.HighestPressure);
        if (entropy >= last.VapourEntropy) return null;
        if (entropy >= last.LiquidEntropy) return (last, (entropy - last.LiquidEntropy) / (last.VapourEntropy - last.LiquidEntropy));
        double Miss(double temperature) => saturation.AtTemperature(temperature).LiquidEntropy - entropy;
        if (Miss(saturation.LowestTemperature) > 0) return null;
        return (saturation.AtTemperature(Brent.FindRoot(Miss, saturation.LowestTemperature, saturation.HighestTemperature, 1e-9, 200)), 0);
    }

    double Held(double pressure) => saturation is null ? pressure : Math.Max(pressure, saturation.LowestPressure);

    // Below 0 the stream is all liquid, over 1 all vapour; NaN where there is no saturation.
    double VapourPart(double pressure)
    {
        if (saturation is null || !(pressure <= saturation.HighestPressure)) return double.NaN;
        var point = saturation.AtPressure(Held(pressure));
        return (enthalpy - point.LiquidEnthalpy) / point.Latent;
    }

    // Part that is vapour where both phases are there, a hair of rounding included; negative elsewhere.
    double Inside(double pressure) => VapourPart(pressure) is > -Hair and < 1 + Hair and var part ? Math.Clamp(part, 0, 1) : -1;

    double FindKink(double low, double high)
    {
        if (saturation is null) return double.NaN;
        (low, high) = (Math.Max(low, saturation.LowestPressure), Math.Min(high, saturation.HighestPressure));
        if (!(high > low)) return double.NaN;
        var step = Math.Log(high / low) / Scan;
        var above = Side(high);
        for (var i = 1; i <= Scan; i++)
        {
            var pressure = i == Scan ? low : high * Math.Exp(-i * step);
            var side = Side(pressure);
            if (side != above)
                return pressure * Math.Exp(Brent.FindRoot(x => VapourPart(Math.Min(pressure * Math.Exp(x), high)) - (above == Phase.Liquid || side == Phase.Liquid ? 0 : 1), 0, step, 1e-12, 200));
            above = side;
        }
        // A dense fluid from above the critical pressure meets the boundary at the end of the curve, if it is not already past it.
        return high == saturation.HighestPressure && Side(high) == Phase.Both ? high : double.NaN;
    }

    Phase Side(double pressure) => VapourPart(pressure) switch { < 0 => Phase.Liquid, > 1 => Phase.Vapour, _ => Phase.Both };

    enum Phase { Liquid, Both, Vapour }
}
