using UnitsNet;

namespace FlowCalc.Layouts.Coverage;

/// <summary>The full cone that a nozzle sprays.</summary>
/// <param name="Angle">The full angle at its tip, over 0 and under 180°.</param>
/// <param name="Nearest">Nearest distance at which it does its work; null where not stated.</param>
/// <param name="Farthest">Farthest distance at which it does its work; null where not stated.</param>
public sealed record Spray(Angle Angle, Length? Nearest, Length? Farthest);
