using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>A bottle of liquefied agent under nitrogen: liquid with nitrogen in it, and gas above that floats in temperature.</summary>
/// <remarks>
/// The agent's partial pressure is that of the liquid's surface; dissolved nitrogen comes out with a lag, dm/dt = −(m − m_equilibrium)/t_r, none of it where t_r is infinite. Real tests show such a
/// lag (a pressure minimum with a recovery after it); its size is a guess, which the band covers.
/// </remarks>
internal sealed class NitrogenBottle : IExpandingBottle
{
    const double MolarGasConstant = 8.314462618;

    const int Agent = 0;
    const int Dissolved = 1;
    const int Gaseous = 2;
    const int GasTemperature = 3;
    const int LiquidTemperature = 4;
    const int Wall = 5;

    // Heat capacities of nitrogen, J/(kg·K).
    const double NitrogenCv = 743;
    const double NitrogenR = 296.8;

    // Of a step, the least lag that an explicit rule of fourth order can follow: what is quicker is in equilibrium after one.
    const double PartOfStep = 0.5;

    readonly Fluid agent;
    readonly NitrogenSolubility solubility;
    readonly double volume, charge, dissolved, gaseous, temperature, lag, agentR, agentCv, compressibility, virial;
    readonly ShellHeat heat;
    readonly double nitrogenMass = Fluid.Of("nitrogen").MolarMass;

    /// <summary>Makes the bottle.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="solubility">How nitrogen dissolves in it.</param>
    /// <param name="volume">Volume of one bottle, m³.</param>
    /// <param name="charge">Mass of agent in one bottle, kg.</param>
    /// <param name="dissolved">Nitrogen dissolved at the start, kg.</param>
    /// <param name="gaseous">Nitrogen in the gas at the start, kg.</param>
    /// <param name="temperature">Temperature at the start, K.</param>
    /// <param name="lag">t_r, s; infinite for nitrogen that stays dissolved.</param>
    /// <param name="heat">Heat from the shell.</param>
    public NitrogenBottle(Fluid agent, NitrogenSolubility solubility, double volume, double charge, double dissolved, double gaseous, double temperature, double lag, ShellHeat heat)
    {
        (this.agent, this.solubility, this.volume, this.charge, this.dissolved, this.gaseous) = (agent, solubility, volume, charge, dissolved, gaseous);
        (this.temperature, this.lag, this.heat) = (temperature, lag, heat);
        var nitrogen = Fluid.Of("nitrogen");
        virial = nitrogen.Equation.Residual(1e-9, nitrogen.CriticalTemperature / temperature).ByDensity / (nitrogen.CriticalDensity / nitrogen.MolarMass);
        agentR = agent.GasConstant;
        var point = agent.Saturation!.AtTemperature(temperature);
        agentCv = agent.Exact(temperature, point.VapourDensity).IsochoricHeatCapacity;
        compressibility = 1 / (point.LiquidDensity * agent.Exact(temperature, point.LiquidDensity).PressurePerDensity);
    }

    /// <inheritdoc/>
    public int Length => 6;

    /// <inheritdoc/>
    public double Charge => charge;

    /// <inheritdoc/>
    public void Start(Span<double> y)
    {
        (y[Agent], y[Dissolved], y[Gaseous]) = (charge, dissolved, gaseous);
        y[GasTemperature] = y[LiquidTemperature] = y[Wall] = temperature;
    }

    /// <inheritdoc/>
    public double LongestStep(ReadOnlySpan<double> y) => lag > 0 && double.IsFinite(lag) ? lag / (PartOfStep * Quickening(Find(y), y)) : double.PositiveInfinity;

    // What comes out raises the pressure and so what stays: it settles by so much quicker than the lag.
    static double Quickening(in Zone zone, ReadOnlySpan<double> y) => 1 + zone.EquilibriumNitrogen / Math.Max(y[Gaseous], 1e-9);

    double IExpandingBottle.Agent(ReadOnlySpan<double> y) => y[Agent];

    /// <inheritdoc/>
    public bool TryDraw(ReadOnlySpan<double> y, bool isLiquid, out Draw draw)
    {
        var zone = Find(y);
        var part = isLiquid ? zone.LiquidAgent / (zone.LiquidAgent + y[Dissolved]) : zone.Vapour / (zone.Vapour + y[Gaseous]);
        draw = new(zone.Pressure, isLiquid ? y[LiquidTemperature] : y[GasTemperature], y[GasTemperature], zone.LiquidVolume, zone.LiquidDensity, part);
        return double.IsFinite(zone.Pressure) && zone.Pressure > 0 && zone.GasVolume > 0;
    }

    /// <inheritdoc/>
    public IStream? Stream(ReadOnlySpan<double> y, bool isLiquid, double lowest)
    {
        var zone = Find(y);
        if (!double.IsFinite(zone.Pressure)) return null;
        if (isLiquid) return new NitrogenStream(agent, solubility, y[Dissolved] / (y[Dissolved] + zone.LiquidAgent), y[LiquidTemperature], zone.Pressure);
        var (constant, cv) = Gas(y, zone);
        return new IdealGasStream(constant, 1 + constant / cv, y[GasTemperature], GasTransport.Nitrogen.Viscosity(y[GasTemperature]));
    }

    /// <inheritdoc/>
    public bool TryRates(ReadOnlySpan<double> y, bool isLiquid, double flow, double step, Span<double> rates)
    {
        var zone = Find(y);
        if (!double.IsFinite(zone.Pressure) || !(zone.GasVolume > 0)) return false;
        var (tg, tl) = (y[GasTemperature], y[LiquidTemperature]);
        var evolved = double.IsFinite(lag) ? (y[Dissolved] - zone.EquilibriumNitrogen) / Math.Max(lag, PartOfStep * step * Quickening(zone, y)) : 0;
        var (constant, cv) = Gas(y, zone);
        var gasMass = zone.Vapour + y[Gaseous];
        var q = heat.Rate(
            y[Wall], tg, 0, gasMass / zone.GasVolume, GasTransport.Nitrogen.Viscosity(tg), cv, constant, gasMass * cv, step) * zone.GasVolume / volume;
        double boiled, work;
        if (isLiquid)
        {
            var perKilogram = zone.LiquidVolume / (zone.LiquidAgent + y[Dissolved]);
            var growth = flow * perKilogram + evolved * solubility.MolarVolume / nitrogenMass;
            boiled = zone.Vapour / zone.GasVolume * growth;
            growth += boiled / zone.LiquidDensity;
            work = zone.Pressure * growth;
            var part = zone.LiquidAgent / (zone.LiquidAgent + y[Dissolved]);
            rates[Agent] = -flow * part;
            rates[Dissolved] = -flow * (1 - part) - evolved;
            rates[Gaseous] = evolved;
        }
        else
        {
            var part = zone.Vapour / gasMass;
            // The liquid that is left boils as its vapour is carried off.
            boiled = zone.LiquidAgent > 0 ? flow * part : 0;
            work = flow * constant * tg;
            rates[Agent] = -flow * part;
            rates[Dissolved] = -evolved;
            rates[Gaseous] = evolved - flow * (1 - part);
        }
        rates[GasTemperature] = (-work + q + evolved * ((NitrogenCv + NitrogenR) * tl - NitrogenCv * tg) + boiled * ((agentCv + agentR) * tl - agentCv * tg)) / (gasMass * cv);
        var point = agent.Saturation!.AtTemperature(tl);
        if (zone.LiquidAgent > 1e-3 * charge) rates[LiquidTemperature] = -boiled * point.Latent / (zone.LiquidAgent * zone.LiquidHeatCapacity);
        rates[Wall] = -q / heat.Capacity;
        if (heat.IsIsothermal) rates[GasTemperature] = rates[LiquidTemperature] = rates[Wall] = 0;
        return true;
    }

    (double Constant, double Cv) Gas(ReadOnlySpan<double> y, in Zone zone)
    {
        var mass = zone.Vapour + y[Gaseous];
        return ((zone.Vapour * agentR + y[Gaseous] * NitrogenR) / mass, (zone.Vapour * agentCv + y[Gaseous] * NitrogenCv) / mass);
    }

    Zone Find(ReadOnlySpan<double> y)
    {
        var tl = y[LiquidTemperature];
        var point = agent.Saturation!.AtTemperature(tl);
        var warmer = agent.Saturation.AtTemperature(tl + 0.5);
        var heatCapacity = (warmer.LiquidEnthalpy - point.LiquidEnthalpy) / 0.5;
        var nitrogenMoles = y[Dissolved] / nitrogenMass;
        double pressure = Math.Max(y[Gaseous], 0) * NitrogenR * y[GasTemperature] / (0.5 * volume) + point.Pressure;
        double liquid = 0, liquidVolume = 0, gasVolume = 0, vapour = 0, x = 0, agentPressure = 0, density = point.LiquidDensity;
        for (var i = 0; i < 30; i++)
        {
            density = point.LiquidDensity * (1 + compressibility * Math.Max(pressure - point.Pressure, 0));
            var swollen = nitrogenMoles * solubility.MolarVolume;
            x = nitrogenMoles / (nitrogenMoles + Math.Max(liquid, 1e-9) / agent.MolarMass);
            // Raoult with Poynting, as for the bottle at rest.
            var raised = (1 - Math.Min(x, 1)) * Math.Exp(agent.MolarMass / point.LiquidDensity * Math.Max(pressure - point.Pressure, 0) / (MolarGasConstant * tl));
            var vapourDensity = point.VapourDensity * raised;
            liquid = Math.Max((y[Agent] - vapourDensity * (volume - swollen)) / (1 - vapourDensity / density), 0);
            liquidVolume = liquid > 0 ? liquid / density + swollen : 0;
            gasVolume = volume - liquidVolume;
            vapour = y[Agent] - liquid;
            agentPressure = liquid > 0 ? point.Pressure * raised : Thin(vapour / gasVolume, y[GasTemperature], point);
            var next = (y[Gaseous] > 0 ? RealGas.Nitrogen.At(y[GasTemperature], y[Gaseous] / gasVolume).Pressure : 0) + agentPressure;
            var isSettled = Math.Abs(next - pressure) < 1e-10 * next;
            pressure = next;
            if (isSettled) break;
        }
        var henry = solubility.Constant * Math.Exp(solubility.MolarVolume * (pressure - point.Pressure) / (MolarGasConstant * tl));
        var partialNitrogen = Math.Max(pressure - agentPressure, 0);
        var fraction = partialNitrogen * Math.Exp(virial * partialNitrogen / (MolarGasConstant * tl)) / henry;
        return new(pressure, liquidVolume, gasVolume, liquid, vapour, density, liquid / agent.MolarMass * fraction / (1 - fraction) * nitrogenMass, heatCapacity);
    }

    // Vapour without liquid: p = Z·ρ·R·T with 1 − Z in proportion to the density, as it is at saturation, so that nothing jumps where the last drop goes.
    double Thin(double density, double gasTemperature, in SaturatedPoint point)
    {
        var saturated = point.Pressure / (point.VapourDensity * agentR * point.Temperature);
        return density * agentR * gasTemperature * (1 - (1 - saturated) * density / point.VapourDensity);
    }

    readonly record struct Zone(
        double Pressure, double LiquidVolume, double GasVolume, double LiquidAgent, double Vapour, double LiquidDensity, double EquilibriumNitrogen, double LiquidHeatCapacity);
}
