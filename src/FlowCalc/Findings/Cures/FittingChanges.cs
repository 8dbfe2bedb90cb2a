using System.Globalization;

namespace FlowCalc.Findings.Cures;

/// <summary>Fittings opened to the bore of their tube.</summary>
static class FittingChanges
{
    /// <summary>The tight fittings of a run, each opened by itself, in the document's order.</summary>
    public static IEnumerable<LayoutChange> Opened(FlowCase flowCase, int index)
    {
        var run = flowCase.Layout.Runs[index];
        for (var fitting = 0; fitting < run.Fittings.Length; fitting++)
        {
            var placed = run.Fittings[fitting];
            if (placed.Fitting.Bore is not { } bore || bore.Meters >= run.Tube.Bore.Meters * (1 - 1e-9)) continue;
            var opened = run with { Fittings = run.Fittings.SetItem(fitting, placed with { Fitting = placed.Fitting with { Bore = run.Tube.Bore } }) };
            var name = placed.Fitting.Name is { } known ? Wording.Id(known) : $"the {Wording.Id(placed.Fitting.Kind)}";
            yield return new LayoutChange(
                new CureChange($"runs/{run.Id}/fittings/{fitting.ToString(CultureInfo.InvariantCulture)}/bore", Wording.Of(bore, flowCase.Units), Wording.Of(run.Tube.Bore, flowCase.Units)),
                $"{name} in {Wording.Id(run.Id)} as wide as its tube ({Wording.Of(run.Tube.Bore, flowCase.Units)} instead of {Wording.Of(bore, flowCase.Units)})",
                flowCase.Layout with { Runs = flowCase.Layout.Runs.SetItem(index, opened) }, 0, 0, null);
        }
    }
}
