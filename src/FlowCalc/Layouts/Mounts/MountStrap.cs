using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>A strap round the bottle, whose two legs go straight to the bracket.</summary>
/// <param name="At">Its place along the bottle's axis, from the middle towards the outlet end.</param>
/// <param name="Width">Its width, over 0.</param>
/// <param name="Thickness">Its thickness, over 0.</param>
/// <param name="Material">What it is.</param>
/// <param name="Pretension">Tension in it where it is tightened; null where not given.</param>
/// <param name="Wrap">Arc of the bottle that it lies on; null where not given.</param>
/// <param name="IsTightenedBothEnds">Whether it is tightened at both its ends, so that friction leaves no end slacker.</param>
public sealed record MountStrap(Length At, Length Width, Length Thickness, MountMaterial Material, Force? Pretension, Angle? Wrap, bool IsTightenedBothEnds);
