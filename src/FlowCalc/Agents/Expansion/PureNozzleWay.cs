namespace FlowCalc.Agents;

/// <summary>Expansion of a pure fluid at constant entropy.</summary>
/// <param name="fluid">The fluid.</param>
/// <param name="stagnation">Absolute total pressure, Pa.</param>
/// <param name="enthalpy">Total enthalpy, J/kg.</param>
/// <param name="entropy">Entropy, J/(kg·K).</param>
/// <param name="vapourPart">Part of the mass that is vapour at the start, 0 to 1; 0 for a dense fluid that comes to boil on the way; NaN for one that never does.</param>
/// <param name="start">The phases at the start; those of the bubble point for a compressed liquid and a dense fluid.</param>
/// <param name="isLiquid">Whether the start is a liquid a little over its bubble pressure.</param>
/// <param name="startTemperature">Temperature at the start, K.</param>
/// <param name="startDensity">Density at the start, kg/m³.</param>
/// <param name="critical">How far it boils beside the critical point, where there is no delay: 0 away from it and on the liquid's side, to 1 on the vapour's.</param>
internal sealed class PureNozzleWay(
    Fluid fluid, double stagnation, double enthalpy, double entropy, double vapourPart, SaturatedPoint start, bool isLiquid, double startTemperature, double startDensity, double critical = 0) : INozzleWay
{
    // Of a short nozzle (Diener, Schmidt 2004, from memory).
    const double ShortNozzle = 0.6;

    const double NearFloor = 1.005;

    readonly SaturationCurve? saturation = fluid.Saturation;
    readonly double exponent = double.IsNaN(vapourPart) ? double.NaN : Exponent(fluid, start);
    readonly (double Temperature, double Density) first = (startTemperature, startDensity);
    double temperature = startTemperature, density = startDensity;
    (double Volume, double Work) boiling = (double.NaN, double.NaN), end = (double.NaN, double.NaN);
    double power;

    /// <inheritdoc/>
    public (double Volume, double Work) Equilibrium(double pressure)
    {
        if (isLiquid && pressure >= start.Pressure) return (1 / start.LiquidDensity, (stagnation - pressure) / start.LiquidDensity);
        if (saturation is not null && pressure < saturation.LowestPressure) return Beyond(pressure);
        if (saturation is not null && pressure <= saturation.HighestPressure)
        {
            var point = saturation.AtPressure(pressure);
            var part = (entropy - point.LiquidEntropy) / (point.VapourEntropy - point.LiquidEntropy);
            if (part is >= 0 and <= 1)
            {
                var volume = part / point.VapourDensity + (1 - part) / point.LiquidDensity;
                var work = (isLiquid ? (stagnation - start.Pressure) / start.LiquidDensity + start.LiquidEnthalpy : enthalpy) - point.LiquidEnthalpy - part * point.Latent;
                return (volume, work);
            }
        }
        var outside = OnePhase.AtEntropy(fluid, pressure, entropy, ref temperature, ref density);
        if (double.IsNaN(density))
        {
            (temperature, density) = first;
            return (double.PositiveInfinity, 0);
        }
        return (1 / density, enthalpy - outside);
    }

    // Below the data the volume goes on by the power of the pressure that it has at their end, so that neither it nor the speed of sound jumps.
    (double Volume, double Work) Beyond(double pressure)
    {
        var floor = saturation!.LowestPressure;
        if (double.IsNaN(end.Volume))
        {
            end = Equilibrium(floor);
            power = Math.Clamp(Math.Log(end.Volume / Equilibrium(NearFloor * floor).Volume) / Math.Log(NearFloor), 0.5, 0.99);
        }
        var ratio = Math.Pow(pressure / floor, 1 - power);
        return (end.Volume * floor / pressure * ratio, end.Work + end.Volume * floor / (1 - power) * (1 - ratio));
    }

    /// <inheritdoc/>
    public (double Volume, double Work) Frozen(double pressure)
    {
        if (double.IsNaN(vapourPart)) return Equilibrium(pressure);
        if (stagnation > start.Pressure)
        {
            // A dense fluid, or a compressed liquid, keeps the density with which it comes to its bubble point.
            if (pressure >= start.Pressure) return Equilibrium(pressure);
            if (double.IsNaN(boiling.Volume)) boiling = Equilibrium(start.Pressure);
            return (boiling.Volume, boiling.Work + (start.Pressure - pressure) * boiling.Volume);
        }
        var (liquid, liquidWork) = ((1 - vapourPart) / start.LiquidDensity, (1 - vapourPart) * (stagnation - pressure) / start.LiquidDensity);
        if (vapourPart == 0) return (liquid, liquidWork);
        var (vapour, work) = IsentropicGas.At(1 / start.VapourDensity, stagnation, exponent, pressure);
        return (liquid + vapourPart * vapour, liquidWork + vapourPart * work);
    }

    /// <inheritdoc/>
    public bool HasDelay => !double.IsNaN(vapourPart);

    /// <inheritdoc/>
    public double LeastPart => critical;

    /// <inheritdoc/>
    public double Part(double ratio)
    {
        if (double.IsNaN(vapourPart)) return 1;
        var (t, latent) = (start.Temperature, start.Latent);
        var step = t - 0.5 > saturation!.LowestTemperature ? -0.5 : 0.5;
        var heatCapacity = (saturation.AtTemperature(t + step).LiquidEnthalpy - start.LiquidEnthalpy) / step;
        var drive = heatCapacity * t * start.Pressure * (1 / start.VapourDensity - 1 / start.LiquidDensity) / (latent * latent) * Math.Log(1 / ratio);
        var part = Math.Min(Math.Pow(vapourPart + drive, ShortNozzle), 1);
        return part + (1 - part) * critical;
    }

    /// <inheritdoc/>
    public bool TrySonic(double ambient, ref NozzleHint hint, out (double Flux, double Throat) answer)
    {
        answer = default;
        return saturation is null && GasThroat.TryFind(fluid, enthalpy, entropy, first.Temperature, first.Density, ambient, ref hint, out answer);
    }

    // κ = ρ·c²/p of the saturated vapour.
    static double Exponent(Fluid fluid, in SaturatedPoint point)
    {
        var state = fluid.At(point.Temperature, point.VapourDensity);
        var exponent = point.VapourDensity * state.SpeedOfSound * state.SpeedOfSound / point.Pressure;
        return exponent > 1.01 ? exponent : 1.01;
    }
}
