using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>One check of a mount in one load case, at its worst direction.</summary>
/// <param name="Kind">What is checked.</param>
/// <param name="Part">Of which part.</param>
/// <param name="Number">Of which bolt or strap, from 0; 0 for an end.</param>
/// <param name="Use">What is asked over what it bears, dimensionless; 1 is all that it bears.</param>
/// <param name="Load">What is asked; null where several loads act together.</param>
/// <param name="Bears">What it bears; null where several loads act together.</param>
/// <param name="Case">Index of the load case.</param>
/// <param name="Direction">Where the mass is thrown, in the layout's axes, of length 1.</param>
public sealed record CheckResult(MountCheckKind Kind, MountPart Part, int Number, double Use, Force? Load, Force? Bears, int Case, Direction Direction)
{
    /// <summary>Whether it tells how near the mount is to breaking; a joint that opens is not broken.</summary>
    public bool IsOfStrength => Kind != MountCheckKind.JointOpening;

    /// <summary>What is left over what is asked, less 1, dimensionless: 0 where nothing is; null where nothing is asked.</summary>
    public double? Margin => Use > 0 ? 1 / Use - 1 : null;
}
