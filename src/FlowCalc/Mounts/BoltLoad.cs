using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>What one bolt bears in a load case; where its direction is any, the greatest of each by itself.</summary>
/// <param name="Part">Of which group.</param>
/// <param name="Number">Which bolt, from 0.</param>
/// <param name="Pull">Pull, without prying; 0 where it presses.</param>
/// <param name="Prying">What prying adds to it.</param>
/// <param name="Shear">Shear.</param>
public sealed record BoltLoad(MountPart Part, int Number, Force Pull, Force Prying, Force Shear);
