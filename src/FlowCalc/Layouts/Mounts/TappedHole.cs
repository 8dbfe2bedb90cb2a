using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>A thread cut into the part that bolts go into.</summary>
/// <param name="Engagement">Length of full thread that holds, over 0.</param>
/// <param name="Material">What it is cut into.</param>
public sealed record TappedHole(Length Engagement, MountMaterial Material);
