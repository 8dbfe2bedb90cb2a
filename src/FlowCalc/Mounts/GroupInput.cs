using System.Collections.Immutable;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Stock;

namespace FlowCalc.Mounts;

/// <summary>A group of bolts with what lies under it, ready to be checked.</summary>
/// <param name="Part">Which group.</param>
/// <param name="Bolts">The bolts.</param>
/// <param name="Arms">Centres of mass over the group's plane, m.</param>
/// <param name="Mass">All that hangs on it, kg.</param>
/// <param name="Sheet">Thickness, m, and material of what it is bolted to; null where not given.</param>
/// <param name="Spread">Diameter that bears on the sheet's far side, m.</param>
/// <param name="Foot">The bracket's foot, where it stands on this group.</param>
/// <param name="Spacer">Length of the spacers under it, m.</param>
sealed record GroupInput(
    MountPart Part, MountBolts Bolts, ImmutableArray<Direction> Arms, double Mass, (double Thickness, MountMaterial Material)? Sheet, double Spread, MountFoot? Foot, double Spacer)
{
    /// <summary>The class that counts.</summary>
    public BoltClass Class => Bolts.Class ?? BoltCatalogue.Weakest;

    /// <summary>Prying over pull, dimensionless.</summary>
    public double Prying => Foot is null ? 0 : PlateBending.Prying(Foot.ToBend.Meters, Foot.ToEdge.Meters);
}
