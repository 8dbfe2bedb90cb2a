using FlowCalc.Agents;

namespace FlowCalc.Bottles;

/// <summary>What a bottle of a gas or a liquefied gas holds at rest.</summary>
internal static class ExpandingContents
{
    /// <summary>The contents of a bottle at a temperature.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="agent">Its agent.</param>
    /// <param name="temperature">Temperature, K, in the agent's range.</param>
    /// <returns>NaN pressure where there is no answer.</returns>
    public static BottleContents Of(Bottle bottle, ExpandingAgent agent, double temperature)
    {
        var (volume, mass) = (bottle.Volume.CubicMeters, bottle.Fill.Kilograms);
        if (agent.Solubility is not { } solubility) return Alone(agent, volume, mass, temperature);
        var charge = bottle.ChargeTemperature.Kelvins;
        var equilibrium = new NitrogenEquilibrium(agent.Fluid, solubility);
        var charged = equilibrium.Charge(volume, mass, charge, bottle.ChargePressure.Pascals);
        return temperature == charge || double.IsNaN(charged.Pressure) ? charged : equilibrium.Warmed(volume, mass, charged.Nitrogen, temperature);
    }

    /// <summary>The contents of a bottle of one fluid.</summary>
    /// <param name="agent">The fluid.</param>
    /// <param name="volume">Volume of the bottle, m³.</param>
    /// <param name="mass">Mass in it, kg.</param>
    /// <param name="temperature">Temperature, K.</param>
    public static BottleContents Alone(ExpandingAgent agent, double volume, double mass, double temperature)
    {
        var (fluid, density) = (agent.Fluid, mass / volume);
        if (agent.CriticalTemperature is { } critical && temperature < critical)
        {
            var point = fluid.ExactSaturation(temperature);
            var part = (density - point.VapourDensity) / (point.LiquidDensity - point.VapourDensity);
            if (part is > 0 and < 1)
                return new(temperature, point.Pressure, BottlePhase.TwoPhase, part, point.LiquidDensity, point.VapourDensity, mass, volume * (1 - part) * point.VapourDensity, 0, 0, 0);
            if (part >= 1)
                return new(temperature, fluid.Exact(temperature, density).Pressure, BottlePhase.LiquidFull, 1, density, double.NaN, mass, 0, 0, 0, 0);
        }
        var pressure = fluid.Exact(temperature, density).Pressure;
        return new(temperature, pressure > 0 ? pressure : double.NaN, BottlePhase.OnePhase, 0, double.NaN, density, mass, mass, 0, 0, 0);
    }

    /// <summary>The stream that an outlet in the liquid draws, or in the gas where there is none.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="contents">What the bottle holds.</param>
    /// <param name="lowest">Lowest absolute pressure on the way, Pa.</param>
    public static IStream Stream(ExpandingAgent agent, in BottleContents contents, double lowest)
    {
        var (fluid, temperature) = (agent.Fluid, contents.Temperature);
        if (agent.Solubility is { } solubility)
        {
            var part = contents.NitrogenInLiquid / (contents.NitrogenInLiquid + contents.Agent - contents.AgentInGas);
            return new NitrogenStream(fluid, solubility, part, temperature, contents.Pressure);
        }
        if (contents.Phase == BottlePhase.TwoPhase)
        {
            var point = fluid.ExactSaturation(temperature);
            return new PureStream(fluid, contents.Pressure, point.LiquidEnthalpy, temperature, point.LiquidDensity, lowest);
        }
        var density = contents.Phase == BottlePhase.LiquidFull ? contents.LiquidDensity : contents.GasDensity;
        return new PureStream(fluid, contents.Pressure, fluid.Exact(temperature, density).Enthalpy, temperature, density, lowest);
    }
}
