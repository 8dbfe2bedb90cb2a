using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>The source of a circuit.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="LowestVoltage">Voltage without load at its weakest, which the firing currents are worked out with.</param>
/// <param name="HighestVoltage">Voltage without load at its strongest, which the test currents are worked out with.</param>
/// <param name="ColdResistance">Inner resistance at its weakest.</param>
/// <param name="FreshResistance">Inner resistance at its strongest.</param>
/// <param name="StoredEnergy">Of a capacitor the energy that it holds at its lowest voltage, half of capacitance times voltage squared; null of every other.</param>
public sealed record CircuitSourceAnswer(
    [property: AllowedValues("battery", "power-pack", "capacitor")] string Kind, Quantity LowestVoltage, Quantity HighestVoltage, Quantity ColdResistance, Quantity FreshResistance, Quantity? StoredEnergy);
