using System.Globalization;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>Fittings opened to the bore of their tube.</summary>
static class FittingChanges
{
    // Opening one of many alike gains little, and each try is a solve.
    const int MostOpened = 5;

    /// <summary>The tightest fittings of a run, each opened by itself, the tightest first.</summary>
    public static IEnumerable<LayoutChange> Opened(JudgedLayout judged, int index)
    {
        var run = judged.Layout.Runs[index];
        var wide = SizeText.Of(run.Tube.Bore.Meters, QuantityKind.Length, judged.Units);
        foreach (var at in Tightest(run))
        {
            var placed = run.Fittings[at];
            var bore = Wording.Of(placed.Fitting.Bore!.Value, judged.Units);
            var opened = placed with { Fitting = placed.Fitting with { Name = null, Bore = UnitsNet.Length.FromMeters(wide.Si) } };
            var name = placed.Fitting.Name is { } known ? Wording.Id(known) : $"the {Wording.Id(placed.Fitting.Kind)}";
            yield return new LayoutChange(
                // A fitting may be named, described in place, or both with a place beside it: only as a whole can it be said in one way.
                [new CureChange(EditPath.Of("runs", run.Id, "fittings", at.ToString(CultureInfo.InvariantCulture)), $"{name} of {bore} bore", Said(opened, wide.Text))],
                $"{name} in {Wording.Id(run.Id)} as wide as its tube ({Wording.Of(run.Tube.Bore, judged.Units)} instead of {bore})",
                judged.Layout with { Runs = judged.Layout.Runs.SetItem(index, run with { Fittings = run.Fittings.SetItem(at, opened) }) }, 0, 0, null);
        }
    }

    // The throat's loss goes with the fourth power of its bore, so that the tightest are the costliest; the document's order breaks ties.
    static IEnumerable<int> Tightest(Run run) =>
        Enumerable.Range(0, run.Fittings.Length)
            .Where(fitting => run.Fittings[fitting].Fitting.Bore is { } bore && bore.Meters < run.Tube.Bore.Meters * (1 - 1e-9))
            .OrderBy(fitting => run.Fittings[fitting].Fitting.Bore!.Value.Meters).ThenBy(fitting => fitting).Take(MostOpened);

    static ChangeValue Said(PlacedFitting placed, string bore)
    {
        var fitting = placed.Fitting;
        return ChangeValue.FromMembers(
            ("fitting", ChangeValue.FromMembers(
                ("kind", fitting.Kind),
                ("lossCoefficient", fitting.LossCoefficient is { } loss ? ChangeValue.FromNumber(loss) : null),
                ("kv", Size(fitting.Kv, QuantityKind.FlowCoefficient)),
                ("bore", bore),
                ("length", Size(fitting.Length?.Meters, QuantityKind.Length)),
                ("angle", Size(fitting.Angle?.Radians, QuantityKind.Angle)),
                ("insertion", Size(fitting.Insertion?.Meters, QuantityKind.Length)),
                ("grip", Size(fitting.Grip?.Meters, QuantityKind.Length)))),
            ("at", Size(placed.At?.Meters, QuantityKind.Length)),
            ("count", placed.Count == 1 ? null : ChangeValue.FromNumber(placed.Count)));
    }

    static ChangeValue? Size(double? si, QuantityKind kind) => si is { } size ? ChangeValue.FromString(SizeText.Exact(size, kind).Text) : null;
}
