using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>The foot of the bracket under each bolt: a strip that bends between the bend of the bracket, the bolt and its own edge.</summary>
/// <param name="Thickness">Its thickness, over 0.</param>
/// <param name="Material">What it is.</param>
/// <param name="Width">Width of the strip that one bolt has to itself, over 0.</param>
/// <param name="ToBend">From the middle of the bolt to the face of the bend or the upright, over 0.</param>
/// <param name="ToEdge">From the middle of the bolt to the free edge behind it, over 0.</param>
public sealed record MountFoot(Length Thickness, MountMaterial Material, Length Width, Length ToBend, Length ToEdge);
