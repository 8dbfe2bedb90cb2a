using FlowCalc.Agents;
using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Upkeep;

/// <summary>What the gauge of a sound bottle at rest shows at a temperature, from the model of the bottle.</summary>
/// <param name="Temperature">Temperature of the bottle.</param>
/// <param name="Pressure">Absolute pressure; null where there is none to tell.</param>
/// <param name="Failure">Why there is none; null where there is.</param>
public sealed record RestPressure(Temperature Temperature, Pressure? Pressure, string? Failure)
{
    /// <summary>The pressure of a bottle.</summary>
    /// <param name="agent">Its agent.</param>
    /// <param name="bottle">The bottle as it was filled.</param>
    /// <param name="temperature">Temperature of the bottle.</param>
    /// <returns>The pressure, or why there is none.</returns>
    public static RestPressure Of(Agent agent, Bottle bottle, Temperature temperature)
    {
        ArgumentNullException.ThrowIfNull(agent);
        ArgumentNullException.ThrowIfNull(bottle);
        var kelvin = temperature.Kelvins;
        if (kelvin < agent.FreezingPoint) return new(temperature, null, $"{agent.Title} freezes at {(agent.FreezingPoint.Value - 273.15).ToString("0.###", System.Globalization.CultureInfo.InvariantCulture)} °C");
        if (!agent.Covers(kelvin)) return new(temperature, null, $"outside what is answered for {agent.Title}");
        var pressure = agent switch
        {
            ExpandingAgent expanding => ExpandingContents.Of(bottle, expanding, kelvin).Pressure,
            LiquidAgent liquid => BottlePressure.TryAt(bottle, liquid, kelvin, out var found) ? found : double.NaN,
            _ => double.NaN,
        };
        return double.IsFinite(pressure) ? new(temperature, UnitsNet.Pressure.FromPascals(pressure), null) : new(temperature, null, "the liquid leaves the gas no room, or the gas is beyond its data");
    }
}
