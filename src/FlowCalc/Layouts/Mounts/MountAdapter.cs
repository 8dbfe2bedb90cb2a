using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>A plate between structure and bracket.</summary>
/// <param name="Thickness">Its thickness, over 0.</param>
/// <param name="Material">What it is.</param>
/// <param name="Bolts">The bolts that hold the bracket on it.</param>
public sealed record MountAdapter(Length Thickness, MountMaterial Material, MountBolts Bolts);
