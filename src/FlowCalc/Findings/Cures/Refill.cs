using FlowCalc.Agents;
using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>A bottle filled or charged otherwise, as the reader would take it.</summary>
static class Refill
{
    // Beyond, no bottle is made, and the reader refuses it.
    const double HighestPressure = 1e8;

    /// <summary>The bottle at another charge pressure; null where the reader would refuse it.</summary>
    /// <param name="agent">The agent, not one that is liquefied alone.</param>
    /// <param name="bottle">The bottle.</param>
    /// <param name="pressure">Absolute pressure at the charge temperature, Pa.</param>
    public static Bottle? Charged(Agent agent, Bottle bottle, double pressure)
    {
        var changed = bottle with { ChargePressure = Pressure.FromPascals(pressure) };
        var temperature = bottle.ChargeTemperature.Kelvins;
        switch (agent)
        {
            case LiquidAgent liquid:
                return pressure > liquid.VapourPressure(temperature) ? changed : null;
            case ExpandingAgent { Kind: AgentKind.InertGas } gas:
                if (pressure > HighestPressure) return null;
                var density = gas.Fluid.GasDensity(temperature, pressure);
                return double.IsFinite(density) && double.IsFinite(gas.Fluid.At(temperature, density).Pressure) ? changed with { Fill = Mass.FromKilograms(density * bottle.Volume.CubicMeters) } : null;
            case ExpandingAgent expanding:
                return HoldsNitrogen(expanding, changed) ? changed : null;
            default:
                return null;
        }
    }

    /// <summary>The bottle with another fill; null where the reader would refuse it.</summary>
    /// <param name="agent">The agent, no inert gas.</param>
    /// <param name="bottle">The bottle.</param>
    /// <param name="mass">The fill, kg.</param>
    /// <param name="ambient">Absolute pressure of the surroundings, Pa.</param>
    public static Bottle? Filled(Agent agent, Bottle bottle, double mass, double ambient)
    {
        var changed = bottle with { Fill = Mass.FromKilograms(mass) };
        var (temperature, volume) = (bottle.ChargeTemperature.Kelvins, bottle.Volume.CubicMeters);
        switch (agent)
        {
            case LiquidAgent liquid:
                return mass / liquid.Density(temperature) < volume ? changed : null;
            case ExpandingAgent { Kind: AgentKind.LiquefiedGas } alone:
                var pressure = ExpandingContents.Alone(alone, volume, mass, temperature).Pressure;
                return pressure <= HighestPressure && pressure > ambient ? changed with { ChargePressure = Pressure.FromPascals(pressure) } : null;
            case ExpandingAgent expanding:
                return HoldsNitrogen(expanding, changed) ? changed : null;
            default:
                return null;
        }
    }

    static bool HoldsNitrogen(ExpandingAgent agent, Bottle bottle)
    {
        var (temperature, volume, mass) = (bottle.ChargeTemperature.Kelvins, bottle.Volume.CubicMeters, bottle.Fill.Kilograms);
        var point = agent.Fluid.ExactSaturation(temperature);
        return mass / point.LiquidDensity < volume && bottle.ChargePressure.Pascals > point.Pressure
            && new NitrogenEquilibrium(agent.Fluid, agent.Solubility!).Charge(volume, mass, temperature, bottle.ChargePressure.Pascals).Pressure > 0;
    }
}
