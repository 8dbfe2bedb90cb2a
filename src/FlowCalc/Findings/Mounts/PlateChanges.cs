using FlowCalc.Findings.Cures;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Mounts;

/// <summary>Changes of the plates of a mount.</summary>
static class PlateChanges
{
    // Sheets and plates that are to be had (common practice, no source), m.
    static readonly double[] Thicknesses = [0.001, 0.0015, 0.002, 0.0025, 0.003, 0.004, 0.005, 0.006, 0.008, 0.01, 0.012, 0.015, 0.02];

    static readonly double[] SpreaderWidths = [0.04, 0.05, 0.06, 0.08, 0.1, 0.12, 0.15, 0.2];

    // A spreader is at least so many holes wide (common practice, no source).
    const double LeastHoles = 4;

    /// <summary>A thicker foot of the bracket.</summary>
    public static IEnumerable<MountChange> ThickerFoot(Mount mount, UnitSystem units)
    {
        if (mount.Foot is not { } foot) yield break;
        foreach (var (change, thickness) in Thicker("mount/foot/thickness", foot.Thickness, units))
            yield return new([change], $"a foot of {change.To!.Words} instead of {change.From!.Words}", mount with { Foot = foot with { Thickness = thickness } });
    }

    /// <summary>A thicker adapter plate; the stack grows with it.</summary>
    public static IEnumerable<MountChange> ThickerAdapter(Mount mount, UnitSystem units)
    {
        if (mount.Adapter is not { } adapter) yield break;
        foreach (var (change, thickness) in Thicker("mount/adapter/thickness", adapter.Thickness, units))
            yield return new([change], $"an adapter plate of {change.To!.Words} instead of {change.From!.Words}", mount with { Adapter = adapter with { Thickness = thickness } });
    }

    /// <summary>Spreaders of 3 mm under the nuts, the narrowest first, as far as the sheet's span leaves room.</summary>
    public static IEnumerable<MountChange> Spreaders(Mount mount, UnitSystem units)
    {
        if (mount.Panel is not { } panel || mount.Bolts.Thread is not null) yield break;
        var thickness = SizeText.Of(Math.Max(Sheets.LeastSpreader, panel.Spreader?.Thickness.Meters ?? 0), QuantityKind.Length, units);
        foreach (var least in SpreaderWidths)
        {
            var width = SizeText.Of(least, QuantityKind.Length, units);
            if (width.Si < LeastHoles * mount.Bolts.Size.Hole.Meters || width.Si < (panel.Spreader?.Width ?? mount.Bolts.Washer)?.Meters || width.Si >= panel.Span?.Meters) continue;
            var spreader = new Spreader(Length.FromMeters(width.Si), Length.FromMeters(thickness.Si));
            if (spreader == panel.Spreader) continue;
            var now = panel.Spreader is { } old ? $"{SizeText.Of(old.Width.Meters, QuantityKind.Length, units).Text} of {SizeText.Of(old.Thickness.Meters, QuantityKind.Length, units).Text}" : null;
            yield return new(
                [new("mount/panel/spreader", now is null ? null : ChangeValue.FromString(now), ChangeValue.FromMembers(("width", width.Text), ("thickness", thickness.Text)))],
                $"spreaders of {width.Text} by {thickness.Text} under the nuts", mount with { Panel = panel with { Spreader = spreader } });
        }
    }

    static IEnumerable<(CureChange Change, Length Thickness)> Thicker(string path, Length now, UnitSystem units)
    {
        var from = SizeText.Of(now.Meters, QuantityKind.Length, units).Text;
        foreach (var thickness in Thicknesses)
        {
            if (thickness <= now.Meters) continue;
            var size = SizeText.Of(thickness, QuantityKind.Length, units);
            yield return (new(path, from, size.Text), Length.FromMeters(size.Si));
        }
    }
}
