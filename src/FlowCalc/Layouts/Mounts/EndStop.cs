using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>A stop that an end of the bottle lies against.</summary>
/// <param name="IsAtOutlet">Whether it is at the outlet end; else at the base.</param>
/// <param name="Capacity">Force that it bears along the axis; null where not given.</param>
public sealed record EndStop(bool IsAtOutlet, Force? Capacity);
