using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>An actuator, and the most that it can get where nothing is meant to fire.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Resistance">Its resistance.</param>
/// <param name="AllFire">The current that is sure to fire it.</param>
/// <param name="NoFire">The current that is sure not to fire it; null where the document does not say.</param>
/// <param name="Test">The largest current where nothing is meant to fire, with the source at its strongest and any one lamp failed: its diode shorted, its resistor at its low end.</param>
/// <param name="TestSound">The same with every lamp sound.</param>
/// <param name="TestLimit">The least of a tenth of the no-fire current, where that is known, and 50 mA.</param>
/// <param name="TestState">The state in which the largest current is.</param>
/// <param name="TestPressed">Name of what is pressed then; null for nothing.</param>
/// <param name="TestLamp">Name of the lamp that has failed then; null for none.</param>
public sealed record ActuatorAnswer(
    string Id, Quantity Resistance, Quantity AllFire, Quantity? NoFire, Quantity Test, Quantity TestSound, Quantity TestLimit,
    [property: AllowedValues("off", "test", "armed")] string TestState, string? TestPressed, string? TestLamp);
