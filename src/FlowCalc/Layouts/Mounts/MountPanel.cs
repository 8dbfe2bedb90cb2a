using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>The sheet of the structure that the bolts clamp.</summary>
/// <param name="Thickness">Its thickness, over 0.</param>
/// <param name="Material">What it is.</param>
/// <param name="Span">Diameter of the largest circle round a bolt that nothing stiffens; null where not given.</param>
/// <param name="Spreader">Plate on its far side, under each nut; null for none.</param>
public sealed record MountPanel(Length Thickness, MountMaterial Material, Length? Span, Spreader? Spreader);
