using FlowCalc.Agents;
using MathNet.Numerics.RootFinding;

namespace FlowCalc.Bottles;

/// <summary>A liquefied agent under nitrogen at rest.</summary>
/// <remarks>
/// Raoult's law with Poynting's factor for the agent, Henry's for nitrogen by its fugacity, partial pressures in the gas, volumes that add. A model, not a measurement: for HFC-227ea pressures are
/// good to about 5 % from 0 to 50 °C (held against ISO 14520-9, from memory), nitrogen's mass to 25 %; the others have twice the doubt.
/// </remarks>
internal sealed class NitrogenEquilibrium
{
    internal const double MolarGasConstant = 8.314462618;

    readonly Fluid agent, nitrogen;
    readonly NitrogenSolubility solubility;

    /// <summary>Makes the model of an agent.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="solubility">How nitrogen dissolves in it.</param>
    public NitrogenEquilibrium(Fluid agent, NitrogenSolubility solubility) => (this.agent, this.solubility, nitrogen) = (agent, solubility, Fluid.Of("nitrogen"));

    /// <summary>Nitrogen that brings a bottle to its pressure, and the state with it.</summary>
    /// <param name="volume">Volume of the bottle, m³.</param>
    /// <param name="mass">Mass of agent, kg.</param>
    /// <param name="temperature">Temperature at charging, K.</param>
    /// <param name="pressure">Absolute charge pressure, Pa.</param>
    /// <returns>The contents; NaN pressure where the agent leaves no room for gas, or its vapour alone has the pressure.</returns>
    public BottleContents Charge(double volume, double mass, double temperature, double pressure) => At(volume, mass, temperature, pressure);

    /// <summary>The bottle at another temperature with the same nitrogen.</summary>
    /// <param name="volume">Volume of the bottle, m³.</param>
    /// <param name="mass">Mass of agent, kg.</param>
    /// <param name="nitrogenMass">Mass of nitrogen, kg.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <returns>The contents; NaN pressure where there is no answer (liquid-full beside the critical point).</returns>
    public BottleContents Warmed(double volume, double mass, double nitrogenMass, double temperature)
    {
        var vapour = temperature < agent.Saturation!.HighestTemperature ? agent.ExactSaturation(temperature).Pressure : double.NaN;
        if (double.IsNaN(vapour)) return At(volume, mass, temperature, double.NaN);
        double Miss(double pressure) => At(volume, mass, temperature, pressure) is { Pressure: > 0 } contents ? contents.Nitrogen / nitrogenMass - 1 : double.NaN;
        // Upward until there is too much nitrogen, or no gas is left.
        var (low, high) = (vapour * (1 + 1e-6), vapour + 2e5);
        while (Miss(high) is < 0 && high < 1e9) (low, high) = (high, high + 0.3 * (high - vapour) + 1e5);
        if (double.IsNaN(Miss(high)) && !Narrow(Miss, ref low, ref high)) return Full(volume, mass, nitrogenMass, temperature, vapour);
        // The root finder holds one accuracy against both the argument and the miss: so both are parts of one.
        return Brent.TryFindRoot(part => Miss(part * high), low / high, 1, 1e-11, 200, out var root) ? At(volume, mass, temperature, root * high) : Full(volume, mass, nitrogenMass, temperature, vapour);
    }

    // The end of the gas lies below high: halve towards it, and stop where there is enough nitrogen.
    static bool Narrow(Func<double, double> miss, ref double low, ref double high)
    {
        var end = high;
        for (var i = 0; i < 60; i++)
        {
            var middle = 0.5 * (low + end);
            var at = miss(middle);
            if (at >= 0)
            {
                high = middle;
                return true;
            }
            if (at < 0) low = middle;
            else end = middle;
        }
        return false;
    }

    BottleContents At(double volume, double mass, double temperature, double pressure)
    {
        var nothing = new BottleContents(temperature, double.NaN, BottlePhase.TwoPhase, double.NaN, double.NaN, double.NaN, mass, 0, 0, 0, double.NaN);
        if (!(pressure > 0) || !(temperature < agent.Saturation!.HighestTemperature)) return nothing;
        var saturated = agent.ExactSaturation(temperature);
        var rt = MolarGasConstant * temperature;
        var liquidDensity = agent.LiquidDensity(temperature, pressure);
        var molarVolume = agent.MolarMass / liquidDensity;
        var raised = saturated.Pressure * Math.Exp(molarVolume * (pressure - saturated.Pressure) / rt);
        var henry = solubility.Constant * Math.Exp(solubility.MolarVolume * (pressure - saturated.Pressure) / rt);
        double x = 0, partial = 0;
        for (var i = 0; i < 60; i++)
        {
            partial = pressure - (1 - x) * raised;
            if (!(partial > 0)) return nothing;
            var next = Fugacity(temperature, partial) / henry;
            var change = Math.Abs(next - x);
            x = next;
            if (change < 1e-14) break;
        }
        if (!(x < 1)) return nothing;
        var agentPressure = pressure - partial;
        var vapour = agentPressure < saturated.Pressure ? agent.GasDensity(temperature, agentPressure) : saturated.VapourDensity * agentPressure / saturated.Pressure;
        var (perLiquid, total) = (molarVolume + x / (1 - x) * solubility.MolarVolume, mass / agent.MolarMass);
        var liquid = (total - volume * vapour / agent.MolarMass) / (1 - perLiquid * vapour / agent.MolarMass);
        var gasVolume = volume - liquid * perLiquid;
        if (!(gasVolume > 0) || !(liquid > 0)) return nothing;
        var nitrogenDensity = nitrogen.GasDensity(temperature, partial);
        return new(
            temperature, pressure, BottlePhase.TwoPhase, 1 - gasVolume / volume, liquidDensity, vapour + nitrogenDensity,
            mass, gasVolume * vapour, gasVolume * nitrogenDensity, liquid * x / (1 - x) * nitrogen.MolarMass, x);
    }

    // No gas left: all nitrogen is dissolved, and the liquid's own compressibility gives the pressure.
    BottleContents Full(double volume, double mass, double nitrogenMass, double temperature, double vapour)
    {
        var dissolved = nitrogenMass / nitrogen.MolarMass * solubility.MolarVolume;
        var density = mass / (volume - dissolved);
        var pressure = agent.Exact(temperature, density) is { PressurePerDensity: > 0, Pressure: var full } && full > vapour ? full : double.NaN;
        var moles = mass / agent.MolarMass;
        return new(
            temperature, pressure, BottlePhase.LiquidFull, 1, density, double.NaN, mass, 0, 0, nitrogenMass,
            nitrogenMass / nitrogen.MolarMass / (moles + nitrogenMass / nitrogen.MolarMass));
    }

    double Fugacity(double temperature, double pressure)
    {
        var density = nitrogen.GasDensity(temperature, pressure);
        var delta = density / nitrogen.CriticalDensity;
        var residual = nitrogen.Equation.Residual(delta, nitrogen.CriticalTemperature / temperature);
        var compressibility = 1 + delta * residual.ByDensity;
        return pressure * Math.Exp(residual.Value + compressibility - 1 - Math.Log(compressibility));
    }
}
