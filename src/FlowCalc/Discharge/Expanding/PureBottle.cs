using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>A bottle of one fluid: liquid and vapour in equilibrium, or one phase. Mass and energy are kept, temperature and pressure found from them.</summary>
/// <remarks>One zone: the vapour has the temperature of the liquid. Kinetic energy is left out.</remarks>
/// <param name="fluid">The fluid.</param>
/// <param name="volume">Volume of one bottle, m³.</param>
/// <param name="charge">Mass in one bottle, kg.</param>
/// <param name="temperature">Temperature at the start, K.</param>
/// <param name="heat">Heat from the shell.</param>
internal sealed class PureBottle(Fluid fluid, double volume, double charge, double temperature, ShellHeat heat) : IExpandingBottle
{
    const int Mass = 0;
    const int Energy = 1;
    const int Wall = 2;

    // J/kg.
    const double Near = 1;

    // What a bottle comes to, K.
    const double ColdestGas = 25;
    const double Hottest = 449;

    readonly SaturationCurve? saturation = fluid.Saturation;
    readonly double start = temperature;
    double last = temperature;

    /// <summary>The fluid.</summary>
    public Fluid Fluid => fluid;

    /// <inheritdoc/>
    public int Length => 3;

    /// <inheritdoc/>
    public double Charge => charge;

    /// <inheritdoc/>
    public bool IsGas => saturation is null;

    /// <inheritdoc/>
    public void Start(Span<double> y)
    {
        (y[Mass], y[Wall]) = (charge, start);
        y[Energy] = charge * At(start, charge / volume).Energy;
    }

    /// <inheritdoc/>
    public double Agent(ReadOnlySpan<double> y) => y[Mass];

    /// <inheritdoc/>
    public bool TryDraw(ReadOnlySpan<double> y, bool isLiquid, out Draw draw)
    {
        var zone = Find(y[Mass] / volume, y[Energy] / y[Mass]);
        draw = new(zone.Pressure, zone.Temperature, zone.Temperature, zone.LiquidVolume, zone.LiquidDensity, 1) { Key = zone.LiquidVolume > 0 ? zone.Temperature : zone.GasEnthalpy };
        return double.IsFinite(zone.Pressure) && zone.Pressure > 0;
    }

    /// <inheritdoc/>
    public IStream? Stream(ReadOnlySpan<double> y, bool isLiquid, double lowest)
    {
        var zone = Find(y[Mass] / volume, y[Energy] / y[Mass]);
        if (!double.IsFinite(zone.Pressure)) return null;
        var (enthalpy, density) = Outlet(zone, isLiquid);
        return new PureStream(fluid, zone.Pressure, enthalpy, zone.Temperature, density, lowest);
    }

    /// <inheritdoc/>
    public bool TryRates(ReadOnlySpan<double> y, bool isLiquid, double flow, double step, Span<double> rates)
    {
        var zone = Find(y[Mass] / volume, y[Energy] / y[Mass]);
        if (!double.IsFinite(zone.Pressure)) return false;
        var rate = heat.Rate(
            y[Wall], zone.Temperature, zone.LiquidVolume / volume, zone.GasDensity, fluid.GasViscosity(zone.Temperature), zone.HeatCapacity, fluid.GasConstant,
            y[Mass] * zone.HeatCapacity, step);
        rates[Mass] = -flow;
        rates[Energy] = heat.IsIsothermal ? -flow * EnergyPerMass(y[Mass] / volume, zone) : -flow * Outlet(zone, isLiquid).Enthalpy + rate;
        rates[Wall] = heat.IsIsothermal ? 0 : -rate / heat.Capacity;
        return true;
    }

    // dU/dm of the whole at constant temperature: of two phases from U = m·u_l + (V − m·v_l)/(v_v − v_l)·(u_v − u_l), of one from u + ρ·(∂u/∂ρ).
    double EnergyPerMass(double density, in Zone zone)
    {
        if (zone.LiquidVolume > 0)
        {
            var (liquid, vapour) = (1 / zone.LiquidDensity, 1 / zone.GasDensity);
            var (liquidEnergy, vapourEnergy) = (zone.LiquidEnthalpy - zone.Pressure * liquid, zone.GasEnthalpy - zone.Pressure * vapour);
            return liquidEnergy - liquid * (vapourEnergy - liquidEnergy) / (vapour - liquid);
        }
        var state = fluid.At(zone.Temperature, density);
        return state.Energy + (state.Pressure - zone.Temperature * state.PressurePerKelvin) / density;
    }

    static (double Enthalpy, double Density) Outlet(in Zone zone, bool isLiquid) =>
        zone.LiquidVolume > 0 && isLiquid ? (zone.LiquidEnthalpy, zone.LiquidDensity) : (zone.GasEnthalpy, zone.GasDensity);

    // State of the whole from its density and specific energy; starts from the last answer.
    Zone Find(double density, double energy)
    {
        if (saturation is not null && TwoPhase(density, energy) is { } both) return both;
        // A state of one phase between liquid and vapour is none, however well its energy fits.
        var one = OnePhase(density, energy);
        return Math.Abs(one.Energy - energy) < Near ? one : Bracketed(density, energy);
    }

    // At a density the energy rises with the temperature, through two phases and one: slow and sure.
    Zone Bracketed(double density, double energy)
    {
        var (low, high) = (saturation?.LowestTemperature ?? ColdestGas, Hottest);
        if (!(At(low, density).Energy <= energy && At(high, density).Energy >= energy)) return Zone.Nothing;
        for (var i = 0; i < 50; i++)
        {
            var middle = 0.5 * (low + high);
            if (At(middle, density).Energy > energy) high = middle;
            else low = middle;
        }
        last = high;
        return At(high, density);
    }

    Zone OnePhase(double density, double energy)
    {
        var t = last;
        for (var i = 0; i < 40; i++)
        {
            var at = fluid.At(t, density);
            var step = Math.Clamp((energy - at.Energy) / at.IsochoricHeatCapacity, -30, 30);
            if (double.IsNaN(step)) break;
            t += step;
            if (Math.Abs(step) > 1e-9 * t) continue;
            last = t;
            return At(t, density);
        }
        return Zone.Nothing;
    }

    Zone? TwoPhase(double density, double energy)
    {
        var t = Math.Clamp(last, saturation!.LowestTemperature, saturation.HighestTemperature);
        for (var i = 0; i < 40; i++)
        {
            var (miss, part) = Miss(t, density, energy);
            var h = t + 1e-3 < saturation.HighestTemperature ? 1e-3 : -1e-3;
            var step = miss * h / (miss - Miss(t + h, density, energy).Miss);
            var next = Math.Clamp(t + Math.Clamp(step, -20, 20), saturation.LowestTemperature, saturation.HighestTemperature);
            if (Math.Abs(next - t) > 1e-9 * t)
            {
                t = next;
                continue;
            }
            // At an end of the curve, or with more than all of either phase, it is one phase.
            if (part is not (>= 0 and <= 1) || Math.Abs(miss) > Near) return null;
            last = next;
            return At(next, density);
        }
        return null;
    }

    (double Miss, double Part) Miss(double t, double density, double energy)
    {
        var point = saturation!.AtTemperature(t);
        var part = (1 / density - 1 / point.LiquidDensity) / (1 / point.VapourDensity - 1 / point.LiquidDensity);
        var (liquid, vapour) = (point.LiquidEnthalpy - point.Pressure / point.LiquidDensity, point.VapourEnthalpy - point.Pressure / point.VapourDensity);
        return (energy - liquid - part * (vapour - liquid), part);
    }

    Zone At(double t, double density)
    {
        if (saturation is not null && t <= saturation.HighestTemperature)
        {
            var point = saturation.AtTemperature(t);
            if (density > point.VapourDensity && density < point.LiquidDensity)
            {
                var part = (1 / density - 1 / point.LiquidDensity) / (1 / point.VapourDensity - 1 / point.LiquidDensity);
                var (liquid, vapour) = (point.LiquidEnthalpy - point.Pressure / point.LiquidDensity, point.VapourEnthalpy - point.Pressure / point.VapourDensity);
                var gas = fluid.At(t, point.VapourDensity);
                return new(
                    t, point.Pressure, liquid + part * (vapour - liquid), volume * (1 - part) * density / point.LiquidDensity,
                    point.LiquidDensity, point.VapourDensity, point.LiquidEnthalpy, point.VapourEnthalpy, gas.IsochoricHeatCapacity);
            }
        }
        var state = fluid.At(t, density);
        return new(t, state.Pressure, state.Energy, 0, density, density, state.Enthalpy, state.Enthalpy, state.IsochoricHeatCapacity);
    }

    readonly record struct Zone(
        double Temperature, double Pressure, double Energy, double LiquidVolume,
        double LiquidDensity, double GasDensity, double LiquidEnthalpy, double GasEnthalpy, double HeatCapacity)
    {
        public static Zone Nothing => new(double.NaN, double.NaN, double.NaN, 0, double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);
    }
}
