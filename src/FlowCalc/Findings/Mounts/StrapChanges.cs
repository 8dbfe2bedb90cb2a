using System.Collections.Immutable;
using FlowCalc.Findings.Cures;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;
using FlowCalc.Stock;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Mounts;

/// <summary>Changes of straps and end stops.</summary>
static class StrapChanges
{
    const string UsualMetal = "stainless-1.4301";

    static readonly bool[] Ends = [false, true];

    // Strip that is to be had (common practice, no source), m.
    static readonly double[] Thicknesses = [0.0005, 0.0008, 0.001, 0.0012, 0.0015, 0.002, 0.0025, 0.003];

    // Where a strap more may lie, as parts of the way from the middle to an end.
    static readonly double[] Places = [-0.5, 0.5, 0, -0.75, 0.75, -0.25, 0.25];

    /// <summary>One strap more, like the first, where there is room for it; where there is none, no change.</summary>
    public static IEnumerable<MountChange> OneMore(Mount mount, Layout layout, UnitSystem units)
    {
        if (mount.Straps is not { IsEmpty: false } straps || layout.Supply is not BottleSupply { Bottle.Shape: { } shape }) yield break;
        var like = straps[0];
        foreach (var part in Places)
        {
            var at = SizeText.Of(part * shape.Length.Meters / 2, QuantityKind.Length, units);
            var place = Length.FromMeters(at.Si);
            if (straps.Any(strap => (strap.At - place).Abs() < (strap.Width + like.Width) / 2)) continue;
            ImmutableArray<MountStrap> more = [.. straps, like with { At = place }];
            yield return new(
                [new("mount/straps", Wording.Count(straps.Length, "strap"), ChangeValue.FromEntries(more.Select(Said)))], $"a strap more at {at.Text} from the bottle's middle", mount with { Straps = more });
        }
    }

    /// <summary>Thicker straps, all alike in what they gain.</summary>
    public static IEnumerable<MountChange> Thicker(Mount mount, UnitSystem units)
    {
        if (mount.Straps is not { IsEmpty: false } straps) yield break;
        foreach (var thickness in Thicknesses)
        {
            if (thickness <= straps.Max(strap => strap.Thickness.Meters)) continue;
            var size = SizeText.Of(thickness, QuantityKind.Length, units);
            yield return new(
                [.. straps.Select((strap, at) => new CureChange(Path(at, "thickness"), SizeText.Of(strap.Thickness.Meters, QuantityKind.Length, units).Text, size.Text))],
                $"straps of {size.Text}", mount with { Straps = [.. straps.Select(strap => strap with { Thickness = Length.FromMeters(size.Si) })] });
        }
    }

    /// <summary>Straps of metal.</summary>
    public static IEnumerable<MountChange> OfMetal(Mount mount)
    {
        if (mount.Straps is not { } straps) yield break;
        var metal = MountMaterial.Find(UsualMetal)!;
        yield return new(
            [.. straps.Select((strap, at) => (strap, at)).Where(one => !one.strap.Material.IsMetal).Select(one => new CureChange(Path(one.at, "material"), one.strap.Material.Id ?? "its own", UsualMetal))],
            $"straps of {UsualMetal}", mount with { Straps = [.. straps.Select(strap => strap.Material.IsMetal ? strap : strap with { Material = metal })] });
    }

    /// <summary>A stop at each end that has none.</summary>
    public static IEnumerable<MountChange> EndStops(Mount mount)
    {
        var now = mount.EndStops ?? [];
        ImmutableArray<EndStop> both = [.. now, .. Ends.Where(isOutlet => now.All(stop => stop.IsAtOutlet != isOutlet)).Select(isOutlet => new EndStop(isOutlet, null))];
        if (both.Length == now.Length) yield break;
        yield return new([new("mount/endStops", mount.EndStops is null ? null : ChangeValue.FromString(Wording.Count(now.Length, "stop")), ChangeValue.FromEntries(both.Select(Said)))], "a stop at each end of the bottle", mount with { EndStops = both });
    }

    /// <summary>Stops that bear what the worst case asks, in steps of half a kilonewton.</summary>
    public static IEnumerable<MountChange> StrongerStops(Mount mount, MountResult result, UnitSystem units)
    {
        const double step = 500;
        if (mount.EndStops is not { } stops) yield break;
        var asked = result.Checks.Where(check => check.Kind == MountCheckKind.EndStop).Select(check => check.Load!.Value.Newtons).DefaultIfEmpty(0).Max();
        var bears = SizeText.Of(Math.Ceiling(asked / step) * step, QuantityKind.Force, units);
        if (bears.Si < asked) bears = SizeText.Exact(asked, QuantityKind.Force);
        yield return new(
            [new("mount/endStops", Wording.Count(stops.Length, "stop"), ChangeValue.FromEntries(stops.Select(stop => Said(stop with { Capacity = Force.FromNewtons(bears.Si) }))))],
            $"end stops that bear {bears.Text}", mount with { EndStops = [.. stops.Select(stop => stop with { Capacity = Force.FromNewtons(bears.Si) })] });
    }

    static string Path(int strap, string member) => FormattableString.Invariant($"mount/straps/{strap}/{member}");

    static ChangeValue Said(MountStrap strap) => ChangeValue.FromMembers(
        ("at", Exact(strap.At.Meters, QuantityKind.Length)), ("width", Exact(strap.Width.Meters, QuantityKind.Length)), ("thickness", Exact(strap.Thickness.Meters, QuantityKind.Length)),
        ("material", Said(strap.Material)), ("pretension", strap.Pretension is { } force ? Exact(force.Newtons, QuantityKind.Force) : null),
        ("wrap", strap.Wrap is { } wrap ? Exact(wrap.Radians, QuantityKind.Angle) : null), ("tightened", strap.IsTightenedBothEnds ? ChangeValue.FromString("both-ends") : null));

    static ChangeValue Said(MountMaterial material) => material.Id is { } id ? id : ChangeValue.FromMembers(
        ("kind", material.Kind.ToString().ToLowerInvariant()), ("tensileStrength", Exact(material.Tensile!.Value.Pascals, QuantityKind.Stress)), ("yieldStrength", Exact(material.Yield!.Value.Pascals, QuantityKind.Stress)));

    static ChangeValue Said(EndStop stop) => ChangeValue.FromMembers(("end", stop.IsAtOutlet ? "outlet" : "base"), ("capacity", stop.Capacity is { } capacity ? Exact(capacity.Newtons, QuantityKind.Force) : null));

    static ChangeValue Exact(double si, QuantityKind kind) => SizeText.Exact(si, kind).Text;
}
