using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>How near to a person a spray points.</summary>
/// <param name="Id">The person.</param>
/// <param name="Zone">Zone of the person; null for none.</param>
/// <param name="Nozzle">The nozzle that points most at the person, of those that no body hides; null where there is none.</param>
/// <param name="OffAxis">Angle between its axis and the way to the person; null with the nozzle.</param>
/// <param name="Distance">How far it is; null with the nozzle.</param>
public sealed record PersonAnswer(string Id, string? Zone, string? Nozzle, Quantity? OffAxis, Quantity? Distance);
