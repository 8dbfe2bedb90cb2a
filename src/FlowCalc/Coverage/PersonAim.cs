using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>Which nozzle points most at a person.</summary>
/// <param name="Person">The person.</param>
/// <param name="Point">Index of the nozzle that points most at the person, of those that no body hides; null where none is known.</param>
/// <param name="OffAxis">Angle between its axis and the way to the person; null with the nozzle.</param>
/// <param name="Distance">How far it is; null with the nozzle.</param>
public sealed record PersonAim(Target Person, int? Point, Angle? OffAxis, Length? Distance);
