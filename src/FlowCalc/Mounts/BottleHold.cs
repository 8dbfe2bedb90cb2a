using System.Collections.Immutable;
using FlowCalc.Layouts.Mounts;

namespace FlowCalc.Mounts;

/// <summary>How straps and stops hold the bottle: tension in each strap, and the bottle along its axis.</summary>
/// <remarks>
/// The bottle lies in a cradle on the face of the mount. A force off the face or to a side pulls on the straps, Fn + |H|/tan φ together (<see cref="StrapStatics.Sideways"/>), in
/// proportion to their places about the centre of mass, without stiffness of bottle or cradle; it adds to the pretension, which is on the safe side. Along the axis friction holds
/// μ·(Σ pressing of the straps + what seats the bottle in the cradle); a force off the face takes its own size from the seating, one into the cradle gives nothing.
/// </remarks>
sealed class BottleHold
{
    /// <summary>Friction where the document gives none: painted or anodised metal on a rubber liner that may be oily (common practice, no source).</summary>
    public const double UsualFriction = 0.2;

    /// <summary>Arc of the cradle where the document gives none, rad (common practice, no source).</summary>
    public const double UsualCradle = Math.PI / 2;

    /// <summary>Arc of a strap where the document gives none, rad: half a turn (common practice, no source).</summary>
    public const double UsualWrap = Math.PI;

    readonly List<MountCheck> checks = [];
    readonly Mount mount;
    readonly double mass;
    readonly Direction axis;

    /// <summary>Sets the checks up.</summary>
    /// <param name="mount">The mount.</param>
    /// <param name="mass">Mass of the full bottle, kg.</param>
    /// <param name="axis">The bottle's axis in the mount's axes, of length 1.</param>
    /// <param name="along">Where its centre of mass may lie along the axis from its middle, m.</param>
    public BottleHold(Mount mount, double mass, Direction axis, ImmutableArray<double> along)
    {
        (this.mount, this.mass, this.axis) = (mount, mass, axis);
        var friction = mount.Friction ?? UsualFriction;
        foreach (var strap in mount.Straps ?? [])
        {
            var (tension, wrap) = (strap.Pretension?.Newtons ?? 0, strap.Wrap?.Radians ?? UsualWrap);
            Hold += friction * tension * (StrapStatics.Pressing(friction, wrap, strap.IsTightenedBothEnds) + StrapStatics.Seating(friction, wrap, strap.IsTightenedBothEnds));
        }
        if (mount.Straps is { IsEmpty: false } straps) AddStraps(straps, along);
        if (mount.Straps is null && mount.EndStops is null) return;
        var (outwards, inwards) = (mass * axis, -mass * axis);
        (Axial, Asked) = (new LoadMeasure([outwards, inwards]), new LoadMeasure([outwards, inwards, Lifted(outwards, friction), Lifted(inwards, friction)]));
        foreach (var isOutlet in (bool[])[false, true]) AddEnd(isOutlet, friction);
    }

    /// <summary>All checks.</summary>
    public IReadOnlyList<MountCheck> Checks => checks;

    /// <summary>What friction holds along the axis at rest, N.</summary>
    public double Hold { get; }

    /// <summary>Force along the axis either way, N at 1 m/s²; null without straps and stops.</summary>
    public LoadMeasure? Axial { get; }

    /// <summary>What friction has to hold, what lifts the bottle counted as asked, N at 1 m/s².</summary>
    public LoadMeasure? Asked { get; }

    /// <summary>Pull of every strap's leg, N at 1 m/s², without pretension.</summary>
    public List<LoadMeasure> Legs { get; } = [];

    /// <summary>Ends that neither a stop nor any friction holds.</summary>
    public List<MountPart> Loose { get; } = [];

    void AddStraps(ImmutableArray<MountStrap> straps, ImmutableArray<double> along)
    {
        var sideways = StrapStatics.Sideways(mount.Cradle?.Radians ?? UsualCradle);
        // The way across the bottle in the face of the mount.
        var across = axis.Cross(new(0, 0, 1)).ToUnit();
        var off = mass * new Direction(0, 0, 1);
        var side = mass * sideways * across;
        Direction[] pulls = [off + side, off - side];
        for (var strap = 0; strap < straps.Length; strap++)
        {
            var one = straps[strap];
            var legs = 2 * Math.Sin(Math.Min(one.Wrap?.Radians ?? UsualWrap, Math.PI) / 2);
            var share = along.Max(place => Math.Max(0, Share(straps, strap, place)));
            var leg = new LoadMeasure([.. pulls.Select(pull => share / legs * pull)]);
            Legs.Add(leg);
            if (one.Material.Yield is not { } yields) continue;
            var bears = yields.Pascals * one.Width.Meters * one.Thickness.Meters;
            checks.Add(new(MountCheckKind.StrapTension, MountPart.Strap, strap, leg, bears, (one.Pretension?.Newtons ?? 0) / bears, IsForce: true));
        }
    }

    /// <summary>Part of a force across the bottle that a strap takes, in proportion about the middle of all straps; the only strap takes all.</summary>
    static double Share(ImmutableArray<MountStrap> straps, int strap, double place)
    {
        var middle = straps.Average(one => one.At.Meters);
        var spread = straps.Sum(one => Math.Pow(one.At.Meters - middle, 2));
        return 1.0 / straps.Length + (spread > 0 ? (place - middle) * (straps[strap].At.Meters - middle) / spread : 0);
    }

    void AddEnd(bool isOutlet, double friction)
    {
        var part = isOutlet ? MountPart.OutletEnd : MountPart.BaseEnd;
        var outwards = (isOutlet ? mass : -mass) * axis;
        if (mount.EndStops?.FirstOrDefault(stop => stop.IsAtOutlet == isOutlet) is { } held)
        {
            if (held.Capacity is { } capacity) checks.Add(new(MountCheckKind.EndStop, part, 0, new LoadMeasure([outwards]), capacity.Newtons, 0, IsForce: true));
            return;
        }
        if (!(Hold > 0))
        {
            Loose.Add(part);
            return;
        }
        checks.Add(new(MountCheckKind.Slip, part, 0, new LoadMeasure([outwards, Lifted(outwards, friction)]), Hold, 0, IsForce: true));
    }

    // What lifts the bottle takes from the friction in the cradle: |Fa| ≤ μ·(N − Fn), with what is taken counted as asked.
    Direction Lifted(Direction along, double friction) => along + new Direction(0, 0, friction * mass);
}
