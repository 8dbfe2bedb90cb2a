using System.Globalization;
using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>Fittings opened to the bore of their tube.</summary>
static class FittingChanges
{
    // Opening one of many alike gains little, and each try is a solve.
    const int MostOpened = 5;

    /// <summary>The tightest fittings of a run, each opened by itself, the tightest first.</summary>
    public static IEnumerable<LayoutChange> Opened(FlowCase flowCase, int index)
    {
        var run = flowCase.Layout.Runs[index];
        foreach (var fitting in Tightest(run))
        {
            var placed = run.Fittings[fitting];
            var bore = placed.Fitting.Bore!.Value;
            var opened = run with { Fittings = run.Fittings.SetItem(fitting, placed with { Fitting = placed.Fitting with { Bore = run.Tube.Bore } }) };
            var name = placed.Fitting.Name is { } known ? Wording.Id(known) : $"the {Wording.Id(placed.Fitting.Kind)}";
            yield return new LayoutChange(
                new CureChange($"runs/{run.Id}/fittings/{fitting.ToString(CultureInfo.InvariantCulture)}/bore", Wording.Of(bore, flowCase.Units), Wording.Of(run.Tube.Bore, flowCase.Units)),
                $"{name} in {Wording.Id(run.Id)} as wide as its tube ({Wording.Of(run.Tube.Bore, flowCase.Units)} instead of {Wording.Of(bore, flowCase.Units)})",
                flowCase.Layout with { Runs = flowCase.Layout.Runs.SetItem(index, opened) }, 0, 0, null);
        }
    }

    // The throat's loss goes with the fourth power of its bore, so that the tightest are the costliest; the document's order breaks ties.
    static IEnumerable<int> Tightest(Run run) =>
        Enumerable.Range(0, run.Fittings.Length)
            .Where(fitting => run.Fittings[fitting].Fitting.Bore is { } bore && bore.Meters < run.Tube.Bore.Meters * (1 - 1e-9))
            .OrderBy(fitting => run.Fittings[fitting].Fitting.Bore!.Value.Meters).ThenBy(fitting => fitting).Take(MostOpened);
}
