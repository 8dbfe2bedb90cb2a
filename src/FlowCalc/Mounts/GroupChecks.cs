using System.Collections.Immutable;
using FlowCalc.Stock;

namespace FlowCalc.Mounts;

/// <summary>The checks of one group of bolts and of the plates under it.</summary>
sealed class GroupChecks
{
    readonly GroupInput input;
    readonly List<MountCheck> checks = [];

    /// <summary>Sets the checks up.</summary>
    public GroupChecks(GroupInput input)
    {
        this.input = input;
        Group = new BoltGroup([.. input.Bolts.At.Select(at => (at.X.Meters, at.Y.Meters))]);
        if (!Group.IsWhole) return;
        var byArm = input.Arms.Select(Group.Shares).ToArray();
        for (var bolt = 0; bolt < Group.Places.Length; bolt++) Add(bolt, [.. byArm.Select(shares => PerAcceleration(shares[bolt]))]);
    }

    /// <summary>The group.</summary>
    public BoltGroup Group { get; }

    /// <summary>Which group it is, and what lies under it.</summary>
    public GroupInput Input => input;

    /// <summary>Pull of every bolt, N at 1 m/s².</summary>
    public List<LoadMeasure> Pulls { get; } = [];

    /// <summary>Shear of every bolt, N at 1 m/s².</summary>
    public List<LoadMeasure> Shears { get; } = [];

    /// <summary>All checks.</summary>
    public IReadOnlyList<MountCheck> Checks => checks;

    BoltShare PerAcceleration(BoltShare share) => new(input.Mass * share.AlongX, input.Mass * share.AlongY, input.Mass * share.AlongZ);

    void Add(int bolt, ImmutableArray<BoltShare> shares)
    {
        var pull = new LoadMeasure([.. shares.Select(share => share.AlongZ)]);
        var shear = new LoadMeasure([.. shares.Select(share => (share.AlongX, share.AlongY))]);
        Pulls.Add(pull);
        Shears.Add(shear);
        AddBolt(bolt, shares, pull);
        AddSheet(bolt, pull, shear);
        if (input.Foot is { Material.Yield: { } yields } foot)
            Force(MountCheckKind.FootBending, bolt, pull, yields.Pascals / PlateBending.Foot(foot.ToBend.Meters, foot.ToEdge.Meters, foot.Width.Meters, foot.Thickness.Meters));
    }

    void AddBolt(int bolt, ImmutableArray<BoltShare> shares, LoadMeasure pull)
    {
        var (size, strength) = (input.Bolts.Size, input.Class);
        var (area, pried) = (size.StressArea.SquareMeters, 1 + input.Prying);
        var bearsShear = BoltResistance.Shear(strength.ShearCoefficient, strength.Tensile.Pascals, area);
        var bearsPull = BoltResistance.Tension(strength.Tensile.Pascals, area, input.Bolts.IsCountersunk);
        checks.Add(new(MountCheckKind.BoltStrength, input.Part, bolt, new LoadMeasure(acceleration => Worst(shares, share =>
            BoltResistance.Together(share.Shear(acceleration) / bearsShear, pried * share.Pull(acceleration) / bearsPull))), 1, 0, IsForce: false));
        Force(MountCheckKind.BoltProof, bolt, pull, BoltCatalogue.LoadsOf(size, strength).Proof.Newtons / pried);
        if (input.Bolts.Preload is { Newtons: > 0 } preload) Force(MountCheckKind.JointOpening, bolt, pull, preload.Newtons / pried);
        if (input.Bolts.Thread is { Material.Tensile: { } tapped } thread)
            Force(MountCheckKind.ThreadStripping, bolt, pull, ThreadStripping.Load(size.Diameter.Meters, size.Pitch.Meters, thread.Engagement.Meters, tapped.Pascals) / pried);
        if (!(input.Spacer > 0)) return;
        var stressDiameter = size.StressDiameter.Meters;
        var modulus = Math.PI / 32 * stressDiameter * stressDiameter * stressDiameter;
        checks.Add(new(MountCheckKind.BoltBending, input.Part, bolt, new LoadMeasure(acceleration => Worst(shares, share =>
        {
            // Both ends of the bolt are held from turning, so that the shear bends it by half its length (von Mises' stress, at the surface).
            var shear = share.Shear(acceleration);
            var along = pried * share.Pull(acceleration) / area + shear * input.Spacer / 2 / modulus;
            return Math.Sqrt(along * along + 3 * shear * shear / (area * area)) / strength.Proof.Pascals;
        })), 1, 0, IsForce: false));
    }

    void AddSheet(int bolt, LoadMeasure pull, LoadMeasure shear)
    {
        if (input.Sheet is not { Material.Tensile: { } tensile } sheet) return;
        var (size, pried) = (input.Bolts.Size, 1 + input.Prying);
        var edge = input.Bolts.Edge?.Meters ?? double.PositiveInfinity;
        var bears = BoltResistance.Bearing(size.Diameter.Meters, size.Hole.Meters, edge, sheet.Thickness, tensile.Pascals, input.Class.Tensile.Pascals);
        if (bears > 0) Force(MountCheckKind.Bearing, bolt, shear, bears);
        if (input.Bolts.Thread is null)
            Force(MountCheckKind.PullThrough, bolt, pull, BoltResistance.PullThrough(input.Spread, sheet.Thickness, tensile.Pascals) / pried);
    }

    /// <summary>Adds the bending of a plate by each bolt's pull.</summary>
    /// <param name="kind">Which plate.</param>
    /// <param name="yields">Yield stress, Pa.</param>
    /// <param name="stress">Stress of each bolt's pull, Pa/N.</param>
    public void AddBending(MountCheckKind kind, double yields, Func<int, double> stress)
    {
        for (var bolt = 0; bolt < Pulls.Count; bolt++) Force(kind, bolt, Pulls[bolt], yields / stress(bolt));
    }

    void Force(MountCheckKind kind, int bolt, LoadMeasure measure, double bears) => checks.Add(new(kind, input.Part, bolt, measure, bears, 0, IsForce: true));

    static double Worst(ImmutableArray<BoltShare> shares, Func<BoltShare, double> of)
    {
        var most = 0.0;
        foreach (var share in shares) most = Math.Max(most, of(share));
        return most;
    }
}
