using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Places clips along runs: near every fitting and either side of every bend, then between them.</summary>
/// <remarks>
/// Distances by <see cref="ClipSpacings"/>, a fifth less beside a fitting that the tube carries (MIL-H-8891A 3.11, second-hand); a clip within 100 mm of every fitting, nozzle and
/// bend (common practice, no source).
/// </remarks>
sealed class ClipPlaces(Layout layout, AssumptionLog log, CancellationToken cancellation)
{
    // More than this many places in a run, or in all, are counted and not listed.
    const int MostInRun = 500, MostInAll = 50_000;

    readonly Dictionary<Tube, Length> tables = [];
    int listed;

    /// <summary>The clips of a run.</summary>
    /// <param name="index">Index of the run.</param>
    public RunClips Of(int index)
    {
        var run = layout.Runs[index];
        var table = TableOf(index, run.Tube);
        var spacing = layout.Cutting?.ClipSpacing ?? table;
        if (run.Clips is { } stated) return Stated(run, stated, table);
        var unplaced = 0L;
        if (run.Route is null)
            foreach (var bend in run.Bends) unplaced += 2L * bend.Count;
        if (!(run.Length.Meters > 0)) return new RunClips(spacing, table, [], 0, unplaced, false, Length.Zero, table, Length.Zero);

        var anchors = ClipAnchors.Of(layout, run, cancellation);
        var gaps = ClipAnchors.Gaps(anchors, spacing.Meters);
        long count = anchors.Count;
        foreach (var gap in gaps) count += gap.Inner;
        var places = Listed(index, count, anchors, gaps);
        // Places made here keep the spacing that is asked for; the table may ask for less.
        return new RunClips(spacing, table, places, count, unplaced, false, spacing, table, Length.Zero);
    }

    ImmutableArray<Length> Listed(int index, long count, List<ClipAnchor> anchors, ClipGap[] gaps)
    {
        if (count > MostInRun || listed + count > MostInAll)
        {
            log.Add("/runs", index, "", "its clips are counted, not listed", $"over {MostInRun} in the run or {MostInAll} in all");
            return [];
        }
        listed += (int)count;
        var places = ImmutableArray.CreateBuilder<Length>((int)count);
        for (var anchor = 0; anchor < anchors.Count; anchor++)
        {
            places.Add(Length.FromMeters(anchors[anchor].At));
            if (anchor == gaps.Length) break;
            for (var inner = 1; inner <= gaps[anchor].Inner; inner++) places.Add(Length.FromMeters(anchors[anchor].At + gaps[anchor].To(inner)));
        }
        return places.MoveToImmutable();
    }

    RunClips Stated(Run run, ImmutableArray<Length> stated, Length table)
    {
        double[] places = [.. stated.Select(clip => clip.Meters)];
        var joints = Joints(run);
        double[] carried = [.. joints.Where(joint => joint.IsCarried).Select(joint => joint.At)];
        var (widest, limit, worst) = (0.0, table.Meters, -1.0);
        var last = 0.0;
        foreach (var place in places.Append(run.Length.Meters))
        {
            var next = Nearest(carried, last);
            var allowed = table.Meters * (next < carried.Length && carried[next] <= place ? ClipGap.Beside : 1);
            if ((place - last) / allowed > worst) (widest, limit, worst) = (place - last, allowed, (place - last) / allowed);
            last = place;
        }
        var farthest = 0.0;
        foreach (var (at, _) in joints) farthest = Math.Max(farthest, FromClip(places, at, run.Length.Meters));
        return new RunClips(layout.Cutting?.ClipSpacing ?? table, table, stated, stated.Length, 0, true, Length.FromMeters(widest), Length.FromMeters(limit), Length.FromMeters(farthest));
    }

    // The whole run is the most that can be said where there is no clip.
    static double FromClip(double[] places, double at, double whole)
    {
        var next = Nearest(places, at);
        var before = next > 0 ? at - places[next - 1] : whole;
        return Math.Min(before, next < places.Length ? places[next] - at : whole);
    }

    // The first of rising places that is not before one.
    static int Nearest(double[] places, double at)
    {
        var found = Array.BinarySearch(places, at);
        if (found < 0) return ~found;
        while (found > 0 && places[found - 1] == at) found--;
        return found;
    }

    // In order along the run.
    (double At, bool IsCarried)[] Joints(Run run)
    {
        var fittings = run.Fittings.Where(PieceCutter.IsCutAt).Select(fitting => (At: fitting.At!.Value.Meters, IsCarried: ClipAnchors.IsCarried(fitting.Fitting)));
        return [(0, ClipAnchors.Carries(layout.Points[run.From])), .. fittings.OrderBy(fitting => fitting.At), (run.Length.Meters, ClipAnchors.Carries(layout.Points[run.To]))];
    }

    Length TableOf(int run, Tube tube)
    {
        if (tables.TryGetValue(tube, out var known)) return known;
        var material = TubeMaterial.Of(tube.Material);
        if (material is null) log.Add("/runs", run, "/tube", "clips at the least distance of all materials, 300 mm at most", "the document names no material that is known here");
        if (tube.OutsideDiameter is null) log.Add("/runs", run, "/tube", "clips as for a tube whose outside diameter is its bore", "the document gives no outside diameter");
        return tables[tube] = ClipSpacings.Of(material, tube.OutsideDiameter ?? tube.Bore);
    }
}
