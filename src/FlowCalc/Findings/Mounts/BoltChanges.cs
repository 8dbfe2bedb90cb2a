using FlowCalc.Findings.Cures;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;
using FlowCalc.Stock;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Mounts;

/// <summary>Changes of a group of bolts; each reads without fault.</summary>
static class BoltChanges
{
    // Half a diameter at a time, up to what a tap cuts.
    const double EngagementStep = 0.5, MostEngagement = 4;

    // Two rows stand this many diameters apart, and more where that is not enough.
    static readonly double[] RowsApart = [8, 15, 25];

    // Large washers of ISO 7093 are three diameters wide (from memory); beyond, what a shop cuts from sheet.
    static readonly double[] WasherDiameters = [2, 3, 4, 5, 6];

    /// <summary>Stronger classes, of those of plain steel from 8.8 on.</summary>
    public static IEnumerable<MountChange> Stronger(Mount mount, MountPart part)
    {
        var (path, bolts) = Of(mount, part);
        foreach (var strength in BoltCatalogue.Classes)
        {
            if (strength.IsStainless || strength.Tensile.Megapascals < 800 || bolts.Class is { } now && strength.Tensile <= now.Tensile) continue;
            yield return new(
                [new($"{path}/class", bolts.Class is { } was ? ChangeValue.FromString(was.Id) : null, strength.Id)], $"class {strength.Id}{(bolts.Class is null ? "" : $" instead of {bolts.Class.Id}")} in the {bolts.Size.Id} bolts {Into(part)}",
                With(mount, part, bolts with { Class = strength }));
        }
    }

    /// <summary>Thicker bolts, where washers, edges and distances leave them room.</summary>
    public static IEnumerable<MountChange> Thicker(Mount mount, MountPart part)
    {
        var (path, bolts) = Of(mount, part);
        foreach (var size in BoltCatalogue.Sizes)
        {
            if (size.Diameter <= bolts.Size.Diameter || !Fits(mount, part, bolts, size)) continue;
            yield return new([new($"{path}/size", bolts.Size.Id, size.Id)], $"{size.Id} instead of {bolts.Size.Id} bolts {Into(part)}", With(mount, part, bolts with { Size = size }));
        }
    }

    /// <summary>More thread in the tapped hole.</summary>
    public static IEnumerable<MountChange> Deeper(Mount mount, MountPart part, UnitSystem units)
    {
        var (path, bolts) = Of(mount, part);
        if (bolts.Thread is not { } thread) yield break;
        for (var diameters = EngagementStep; diameters <= MostEngagement; diameters += EngagementStep)
        {
            var length = SizeText.Of(diameters * bolts.Size.Diameter.Meters, QuantityKind.Length, units);
            if (length.Si <= thread.Engagement.Meters) continue;
            yield return new(
                [new($"{path}/thread/engagement", SizeText.Of(thread.Engagement.Meters, QuantityKind.Length, units).Text, length.Text)], $"{length.Text} of thread for the {bolts.Size.Id} bolts {Into(part)}",
                With(mount, part, bolts with { Thread = thread with { Engagement = Length.FromMeters(length.Si) } }));
        }
    }

    /// <summary>Wider washers on the far side, up to what a spreader is better for.</summary>
    public static IEnumerable<MountChange> WiderWashers(Mount mount, MountPart part, UnitSystem units)
    {
        var (path, bolts) = Of(mount, part);
        if (bolts.Thread is not null || part == MountPart.Structure && mount.Panel?.Spreader is not null) yield break;
        foreach (var diameters in WasherDiameters)
        {
            var width = SizeText.Of(diameters * bolts.Size.Diameter.Meters, QuantityKind.Length, units);
            if (width.Si <= (bolts.Washer ?? bolts.Size.MeanHead).Meters || width.Si <= bolts.Size.Hole.Meters || part == MountPart.Structure && width.Si >= mount.Panel?.Span?.Meters) continue;
            yield return new(
                [new($"{path}/washer", bolts.Washer is { } now ? ChangeValue.FromString(SizeText.Of(now.Meters, QuantityKind.Length, units).Text) : null, width.Text)], $"washers of {width.Text} under the {bolts.Size.Id} bolts {Into(part)}",
                With(mount, part, bolts with { Washer = Length.FromMeters(width.Si) }));
        }
    }

    /// <summary>Every bolt twice, in two rows either side of the line in which they stand.</summary>
    public static IEnumerable<MountChange> TwoRows(Mount mount, MountPart part, UnitSystem units)
    {
        var (path, bolts) = Of(mount, part);
        if (bolts.At.Length is < 2 or > Layouts.Reading.Mounts.MountBoltsReader.MostBolts / 2) yield break;
        var (dx, dy) = ((bolts.At[^1].X - bolts.At[0].X).Meters, (bolts.At[^1].Y - bolts.At[0].Y).Meters);
        var length = Math.Sqrt(dx * dx + dy * dy);
        foreach (var diameters in RowsApart)
        {
            var half = diameters / 2 * bolts.Size.Diameter.Meters;
            var (across, along) = (-dy / length * half, dx / length * half);
            List<BoltPlace> places = [];
            List<ChangeValue> words = [];
            foreach (var sign in (int[])[-1, 1])
                foreach (var at in bolts.At)
                {
                    var (x, y) = (SizeText.Of(at.X.Meters + sign * across, QuantityKind.Length, units), SizeText.Of(at.Y.Meters + sign * along, QuantityKind.Length, units));
                    places.Add(new(Length.FromMeters(x.Si), Length.FromMeters(y.Si)));
                    words.Add(ChangeValue.FromEntries(x.Text, y.Text));
                }
            yield return new(
                [new($"{path}/at", FormattableString.Invariant($"{bolts.At.Length} in one line"), ChangeValue.FromEntries(words))],
                $"two rows of bolts {SizeText.Of(2 * half, QuantityKind.Length, units).Text} apart {Into(part)} instead of one", With(mount, part, bolts with { At = [.. places] }));
        }
    }

    /// <summary>A group and its path in the document.</summary>
    public static (string Path, MountBolts Bolts) Of(Mount mount, MountPart part) =>
        part == MountPart.Adapter ? ("mount/adapter/bolts", mount.Adapter!.Bolts) : ("mount/bolts", mount.Bolts);

    static string Into(MountPart part) => part == MountPart.Adapter ? "into the adapter" : "into the structure";

    static Mount With(Mount mount, MountPart part, MountBolts bolts) =>
        part == MountPart.Adapter ? mount with { Adapter = mount.Adapter! with { Bolts = bolts } } : mount with { Bolts = bolts };

    static bool Fits(Mount mount, MountPart part, MountBolts bolts, BoltSize size)
    {
        var panel = part == MountPart.Structure ? mount.Panel : null;
        return !(bolts.Washer <= size.Hole) && !(bolts.Edge <= size.Hole / 2) && !(panel?.Spreader?.Width <= size.Hole) && !(panel?.Span <= (panel?.Spreader?.Width ?? bolts.Washer ?? size.Head))
            && bolts.At.Select((one, at) => (one, at)).All(one => bolts.At.Take(one.at).All(other => Apart(one.one, other) >= size.Diameter.Meters));
    }

    static double Apart(BoltPlace a, BoltPlace b) => Math.Sqrt(Math.Pow((a.X - b.X).Meters, 2) + Math.Pow((a.Y - b.Y).Meters, 2));
}
