using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Routes;
using FlowCalc.Stock;

namespace FlowCalc.Explanations;

/// <summary>The clips and sleeves of a run.</summary>
internal static class ClipSteps
{
    /// <summary>Writes the clips down: the spacing of the table, and where they sit unless the document says so.</summary>
    /// <param name="log">Where to; it stands at the run.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="run">The run.</param>
    /// <param name="clips">Its clips.</param>
    /// <param name="cancellationToken">Asked now and then.</param>
    public static void Add(StepLog log, Layout layout, Run run, RunClips clips, CancellationToken cancellationToken)
    {
        Spacing(log, run.Tube, clips.Table.Meters);
        if (clips.AreStated || !(run.Length.Meters > 0)) return;
        var anchors = ClipAnchors.Of(layout, run, cancellationToken);
        for (var anchor = 0; anchor < anchors.Count; anchor++) Fixed(log, $"clip beside a fitting or bend {anchor + 1}", anchors[anchor]);
        List<double> counts = [anchors.Count];
        var gaps = ClipAnchors.Gaps(anchors, clips.Spacing.Meters);
        for (var gap = 0; gap < gaps.Length; gap++)
        {
            if (gaps[gap].Inner == 0) continue;
            var (name, width) = ($"gap {gap + 1}", anchors[gap + 1].At - anchors[gap].At);
            var (first, last) = (Factor(anchors[gap]), Factor(anchors[gap + 1]));
            log.Add(ClipEquations.Spans, name, gaps[gap].Inner, width, clips.Spacing.Meters, first, last);
            log.Add(ClipEquations.Span, name, gaps[gap].Unit, width, first, last, gaps[gap].Inner);
            counts.Add(gaps[gap].Inner);
        }
        log.Sum(ClipEquations.Count, "clips", clips.Count, counts);
    }

    /// <summary>Writes the sleeves down.</summary>
    /// <param name="log">Where to; it stands at the run.</param>
    /// <param name="run">The run.</param>
    /// <param name="sleeves">Its sleeves.</param>
    public static void Sleeves(StepLog log, Run run, ImmutableArray<Sleeve> sleeves)
    {
        HotPlace[] hot = [.. run.HotPlaces.Where(place => place.IsSleeved)];
        for (var sleeve = 0; sleeve < hot.Length; sleeve++)
        {
            log.Add(ClipEquations.SleeveLength, $"sleeve {sleeve + 1}", sleeves[sleeve].Length.Meters, run.Length.Meters, hot[sleeve].To.Meters, hot[sleeve].From.Meters);
            log.Add(ClipEquations.SleeveInside, $"sleeve {sleeve + 1}", sleeves[sleeve].InsideDiameter.Meters, Outside(run.Tube));
        }
    }

    static void Spacing(StepLog log, Tube tube, double table)
    {
        const string part = "clips";
        var (material, outside) = (TubeMaterial.Of(tube.Material), Outside(tube));
        var (low, high) = ClipSpacings.Rows(material, outside);
        // Of aluminium the table alone decides.
        var aluminium = ClipSpacings.IsTabled(material) ? table : ClipSpacings.Of(Aluminium, UnitsNet.Length.FromMeters(outside)).Meters;
        if (low == high) log.Add(ClipEquations.LargestSpacing, part, aluminium, high.Spacing);
        else log.Add(ClipEquations.TableSpacing, part, aluminium, low.Spacing, high.Spacing, outside, low.Outside, high.Outside);
        if (!ClipSpacings.IsTabled(material)) log.Add(ClipEquations.UsualSpacing, part, table, aluminium);
    }

    static void Fixed(StepLog log, string part, in ClipAnchor anchor)
    {
        switch (anchor.Place)
        {
            case ClipAnchorPlace.Start:
                log.Add(ClipEquations.Behind, part, anchor.At, anchor.From);
                break;
            case ClipAnchorPlace.End:
                log.Add(ClipEquations.Before, part, anchor.At, anchor.To);
                break;
            default:
                log.Add(ClipEquations.Middle, part, anchor.At, anchor.From, anchor.To);
                break;
        }
    }

    static TubeMaterial Aluminium => TubeMaterial.All.First(material => material.Kind == "aluminium");

    static double Factor(in ClipAnchor anchor) => anchor.IsBesideCarried ? ClipGap.Beside : 1;

    static double Outside(Tube tube) => (tube.OutsideDiameter ?? tube.Bore).Meters;
}
