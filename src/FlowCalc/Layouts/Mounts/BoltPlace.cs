using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>The place of a bolt in the mount's face.</summary>
/// <param name="X">Along the mount's x.</param>
/// <param name="Y">Along the mount's y.</param>
public readonly record struct BoltPlace(Length X, Length Y);
