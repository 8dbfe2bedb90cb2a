using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Cuts a run into its pieces: one, and one more for every fitting that has its place in it.</summary>
static class PieceCutter
{
    // A length that is a whole millimetre but for rounding stays it.
    const double Hair = 1e-6;

    /// <summary>Whether the tube is cut at a fitting: it has a place and is one.</summary>
    public static bool IsCutAt(PlacedFitting fitting) => fitting is { At: not null, Count: 1 };

    /// <summary>The pieces from the run's start; none for a run of no length.</summary>
    public static ImmutableArray<TubePiece> Cut(Layout layout, int index, Bench bench, AssumptionLog log)
    {
        var run = layout.Runs[index];
        if (!(run.Length.Meters > 0)) return [];
        var bends = PlacedBend.Of(run);
        var fittings = CutsOf(run);
        var pieces = ImmutableArray.CreateBuilder<TubePiece>(fittings.Length + 1);
        var start = AtPoint(layout.Points[run.From], run.StartJoint, 0, bench);
        var next = 0;
        for (var number = 1; number <= fittings.Length + 1; number++)
        {
            var isLast = number > fittings.Length;
            var end = isLast
                ? AtPoint(layout.Points[run.To], run.EndJoint, run.Length.Meters, bench)
                : AtFitting(fittings[number - 1].Item, index, fittings[number - 1].Index, log);
            var first = next;
            // A bend belongs to the piece that holds its middle.
            while (next < bends.Length && (isLast || bends[next].Middle < end.Place)) next++;
            pieces.Add(Piece(index, number, start, end, bends.AsSpan(first, next - first), bench));
            start = end;
        }
        return pieces.MoveToImmutable();
    }

    /// <summary>The fittings at which a run is cut, in order along it, with their places in the document's list.</summary>
    public static (int Index, PlacedFitting Item)[] CutsOf(Run run) => [.. run.Fittings.Index().Where(one => IsCutAt(one.Item)).OrderBy(one => one.Item.At!.Value.Meters)];

    /// <summary>How a tube ends at a point: the run's own joint, else the point's, else the depth that the bench takes.</summary>
    public static Joint JointAt(LayoutPoint point, Joint own, Bench bench)
    {
        var joint = own.IsGiven ? own : point.Joint;
        return joint with { Insertion = joint.Insertion ?? (joint.IsGiven ? null : bench.Insertion) };
    }

    static TubePiece Piece(int run, int number, in CutEnd start, in CutEnd end, ReadOnlySpan<PlacedBend> bends, Bench bench)
    {
        var (from, to) = (start.Place - start.Allowance, end.Place + end.Allowance);
        var marks = ImmutableArray.CreateBuilder<BendMark>(bends.Length);
        var straights = ImmutableArray.CreateBuilder<Length>(bends.Length + 1);
        var last = from;
        foreach (var bend in bends)
        {
            marks.Add(new BendMark(Length.FromMeters(bend.Start - from), bend.Bend.Angle, bend.Bend.Radius, marks.Count == 0 ? null : bend.Rotation));
            straights.Add(Length.FromMeters(bend.Start - last));
            last = bend.End;
        }
        straights.Add(Length.FromMeters(to - last));
        var exact = to - from;
        double? cut = exact > 0 ? Math.Ceiling(exact * 1e3 - Hair) / 1e3 : null;
        return new TubePiece(run, number, Ended(start, straights[0], !bends.IsEmpty), Ended(end, straights[^1], !bends.IsEmpty), Length.FromMeters(exact),
            cut is { } length ? Length.FromMeters(length) : null, cut is { } sawn ? Length.FromMeters(sawn + 2 * bench.Squaring) : null, marks.MoveToImmutable(), straights.MoveToImmutable());
    }

    static PieceEnd Ended(in CutEnd end, Length straight, bool hasBend) => new(
        end.Fitting, end.IsPoint, end.Insertion, Length.FromMeters(end.Allowance), end.IsKnown, straight,
        hasBend ? straight - (end.Insertion ?? Length.Zero) - end.Grip : null);

    static CutEnd AtPoint(LayoutPoint point, Joint own, double place, Bench bench)
    {
        var joint = JointAt(point, own, bench);
        var allowance = joint.CentreToStop is { } stop ? -stop.Meters : joint.Insertion?.Meters ?? 0;
        return new CutEnd(place, point.Id, IsPoint: true, joint.Insertion, Length.Zero, allowance, own.IsGiven || point.Joint.IsGiven);
    }

    // The length of a fitting is that of its own bore, so that either tube stops at an end of it; its place is its middle.
    static CutEnd AtFitting(PlacedFitting placed, int run, int index, AssumptionLog log)
    {
        var fitting = placed.Fitting;
        var isKnown = fitting.CentreToStop is not null || fitting.Length is not null;
        if (fitting is { CentreToStop: null, Length: not null })
            log.Add("/runs", run, $"/fittings/{index}", "either tube stops half the fitting's length from its place", "the document gives no centreToStop, and its length is that of its bore");
        var stop = fitting.CentreToStop?.Meters ?? (fitting.Length?.Meters / 2 ?? 0);
        return new CutEnd(placed.At!.Value.Meters, fitting.Name ?? fitting.Kind, IsPoint: false, fitting.Insertion, fitting.Grip ?? Length.Zero, -stop, isKnown);
    }

    /// <summary>Where a piece ends: lengths in m along the run.</summary>
    readonly record struct CutEnd(double Place, string Fitting, bool IsPoint, Length? Insertion, Length Grip, double Allowance, bool IsKnown);
}
