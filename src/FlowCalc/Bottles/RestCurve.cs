using System.Collections.Immutable;
using FlowCalc.Agents;

namespace FlowCalc.Bottles;

/// <summary>The pressure of a bottle of a gas or a liquefied gas over its temperature.</summary>
public sealed record RestCurve
{
    // Every full 5 K of the Celsius scale, from arctic cold to where fire services test bottles.
    const double Step = 5;
    const double IcePoint = 273.15;
    const double Coldest = IcePoint - 40;
    const double Warmest = IcePoint + 70;

    // What such bottles usually hold, where nothing is asked: common practice, no source.
    const double UsualGasPressure = 200e5;
    const double UsualNitrogenPressure = 25e5;

    /// <summary>Fill density, kg/m³.</summary>
    public required double Fill { get; init; }

    /// <summary>Absolute pressure at the charge temperature, Pa; null for a gas that is liquefied alone, whose fill says it.</summary>
    public required double? ChargePressure { get; init; }

    /// <summary>Temperature at charging, K.</summary>
    public required double ChargeTemperature { get; init; }

    /// <summary>The bottle at each temperature, rising.</summary>
    public required ImmutableArray<RestPoint> Points { get; init; }

    /// <summary>The curve of a bottle.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="fill">Fill density, kg/m³; null for the usual one. A gas does not take one.</param>
    /// <param name="chargePressure">Absolute pressure at charging, Pa; null for 200 bar of a gas and 25 bar of nitrogen over 1 atm. A gas liquefied alone does not take one.</param>
    /// <param name="chargeTemperature">Temperature at charging, K, within what is answered for the agent.</param>
    /// <returns>The curve; null where such a bottle cannot be: no room for gas, or a pressure that the agent's vapour alone has.</returns>
    /// <exception cref="ArgumentException">The fill or the pressure is one that the agent does not take, or not over 0.</exception>
    public static RestCurve? Of(ExpandingAgent agent, double? fill, double? chargePressure, double chargeTemperature)
    {
        ArgumentNullException.ThrowIfNull(agent);
        if (fill is not null && (agent.Kind == AgentKind.InertGas || !(fill > 0))) throw new ArgumentException("Over 0, and none for a gas.", nameof(fill));
        if (chargePressure is not null && (agent.Kind == AgentKind.LiquefiedGas || !(chargePressure > 0))) throw new ArgumentException("Over 0, and none for a gas that is liquefied alone.", nameof(chargePressure));
        if (!agent.Covers(chargeTemperature)) throw new ArgumentException("Outside what is answered for the agent.", nameof(chargeTemperature));

        double? pressure = agent.Kind switch
        {
            AgentKind.InertGas => chargePressure ?? UsualGasPressure + 101_325,
            AgentKind.LiquefiedUnderNitrogen => chargePressure ?? UsualNitrogenPressure + 101_325,
            _ => null,
        };
        var density = agent.Kind == AgentKind.InertGas ? agent.Fluid.GasDensity(chargeTemperature, pressure!.Value) : fill ?? agent.UsualFill!.Value;
        if (!double.IsFinite(density)) return null;
        // Of one cubic metre, since only densities count.
        Func<double, BottleContents> at = temperature => ExpandingContents.Alone(agent, 1, density, temperature);
        if (agent.Solubility is { } solubility)
        {
            var equilibrium = new NitrogenEquilibrium(agent.Fluid, solubility);
            var charged = equilibrium.Charge(1, density, chargeTemperature, pressure!.Value);
            if (!(charged.Pressure > 0)) return null;
            at = temperature => equilibrium.Warmed(1, density, charged.Nitrogen, temperature);
        }
        return new() { Fill = density, ChargePressure = pressure, ChargeTemperature = chargeTemperature, Points = [.. Temperatures(agent).Select(temperature => Point(at(temperature)))] };
    }

    static IEnumerable<double> Temperatures(ExpandingAgent agent)
    {
        var (low, high) = (Math.Max(Coldest, agent.LowestTemperature), Math.Min(Warmest, agent.HighestTemperature));
        for (var temperature = low; temperature < high - 1e-6; temperature += Step) yield return temperature;
        yield return high;
    }

    static RestPoint Point(in BottleContents contents)
    {
        if (!double.IsFinite(contents.Pressure)) return new(contents.Temperature, null, null, null);
        return new(contents.Temperature, contents.Pressure, contents.Phase == BottlePhase.OnePhase ? null : contents.LiquidPart, contents.Phase);
    }
}
