using System.Globalization;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>Runs bent to another radius.</summary>
static class BendChanges
{
    /// <summary>The least radius that its tube allows, for a run whose bends are tighter; none where nothing is known of it or the bends do not fit then.</summary>
    public static IEnumerable<LayoutChange> ToLeast(JudgedLayout judged, int index)
    {
        if (Bends.Least(judged.Layout.Runs[index].Tube, judged.FlowLimit(FindingCodes.BendTooTight)) is not var (least, _)) yield break;
        var size = SizeText.Of(least, QuantityKind.Length, judged.Units);
        // Rounded down it would still be too tight.
        if (size.Si < least * (1 - 1e-10)) size = SizeText.Of(least * (1 + 1e-5), QuantityKind.Length, judged.Units);
        if (Change(judged, index, size) is { } change) yield return change;
    }

    /// <summary>Another radius in all corners of a run that is given by its route; null where it cannot be laid so.</summary>
    /// <param name="judged">The layout.</param>
    /// <param name="index">The run.</param>
    /// <param name="ratio">How many times the radius.</param>
    public static LayoutChange? Scaled(JudgedLayout judged, int index, double ratio)
    {
        var run = judged.Layout.Runs[index];
        return run.Route is null || run.Bends.Length == 0 ? null : Change(judged, index, SizeText.Of(Tightest(run) * ratio, QuantityKind.Length, judged.Units, 3));
    }

    static LayoutChange? Change(JudgedLayout judged, int index, SizeText radius)
    {
        var run = judged.Layout.Runs[index];
        if (radius.Si < 0.5 * run.Tube.Bore.Meters || Rebending.WithRadius(judged.Layout, run, Length.FromMeters(radius.Si)) is not { } changed || !Rebending.Fits(changed)) return null;
        string At(int bend) => EditPath.Of("runs", run.Id, "bends", bend.ToString(CultureInfo.InvariantCulture), "radius");
        var from = Wording.Of(Length.FromMeters(Tightest(run)), judged.Units);
        CureChange[] changes = run.Route is not null
            ? [new CureChange(EditPath.Of("runs", run.Id, "bendRadius"), from, radius.Text)]
            : [.. Enumerable.Range(0, run.Bends.Length).Where(bend => run.Bends[bend].Radius.Meters < radius.Si)
                .Select(bend => new CureChange(At(bend), Wording.Of(run.Bends[bend].Radius, judged.Units), radius.Text))];
        var fits = run.Route is null ? "" : ", which fits its route";
        return new LayoutChange([.. changes], $"a radius of {radius.Text} instead of {from} in {Wording.Id(run.Id)}{fits}",
            judged.Layout with { Runs = judged.Layout.Runs.SetItem(index, changed) }, run.Length.Meters, LayoutChange.StepOf(Tightest(run), radius.Si), null);
    }

    static double Tightest(Run run) => run.Bends.Min(bend => bend.Radius.Meters);
}
