using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>An actuator while a push fires it.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Current">Its current.</param>
/// <param name="Voltage">The voltage over it.</param>
/// <param name="Margin">Its current over its all-fire current.</param>
/// <param name="CutOff">Whether it no longer gets its all-fire current once another that is fired with it has opened.</param>
/// <param name="TimeConstant">Of a capacitor the time in which its current falls to 1/e; null of every other source.</param>
/// <param name="TimeAboveAllFire">Of a capacitor the time for which it is at its all-fire current or over; null of every other source, and where that never ends.</param>
/// <param name="Energy">Of a capacitor the energy that it has got when all is over; null of every other source.</param>
public sealed record FiredAnswer(string Id, Quantity Current, Quantity Voltage, double Margin, bool CutOff, Quantity? TimeConstant, Quantity? TimeAboveAllFire, Quantity? Energy);
