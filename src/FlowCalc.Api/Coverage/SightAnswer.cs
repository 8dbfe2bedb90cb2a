using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>How a nozzle stands to a target.</summary>
/// <param name="Nozzle">The nozzle.</param>
/// <param name="Reaches">Whether its spray may come to the target: in its cone, in its range and behind no body.</param>
/// <param name="Distance">How far the target is.</param>
/// <param name="OffAxis">Angle between the axis of the spray and the way to the target.</param>
/// <param name="InCone">Whether the target is in the cone.</param>
/// <param name="InRange">Whether it is in the range that the document states of the spray; true where it states none.</param>
/// <param name="HiddenBy">The first body in the straight way; null for none.</param>
public sealed record SightAnswer(string Nozzle, bool Reaches, Quantity Distance, Quantity OffAxis, bool InCone, bool InRange, string? HiddenBy);
