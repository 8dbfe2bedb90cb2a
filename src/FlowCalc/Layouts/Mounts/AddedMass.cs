using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>Something besides the bottle that hangs on the bolts.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Mass">Its mass, over 0.</param>
/// <param name="At">Its centre of mass.</param>
public sealed record AddedMass(string Name, Mass Mass, Place At);
