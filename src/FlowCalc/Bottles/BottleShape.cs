using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>Inside of a bottle as a cylinder of the same volume.</summary>
/// <param name="Diameter">Inside diameter, over 0.</param>
/// <param name="Length">Inside length along the axis, over 0.</param>
public sealed record BottleShape(Length Diameter, Length Length);
