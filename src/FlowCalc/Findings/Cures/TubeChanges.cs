using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>Runs in another tube: the document's own sizes first, then the catalogue's.</summary>
static class TubeChanges
{
    /// <summary>A run in the document's own tubes of larger bore, the next size first.</summary>
    public static IEnumerable<LayoutChange> Wider(FlowCase flowCase, int run, int most) =>
        Own(flowCase, run, tube => tube.Bore.Meters > flowCase.Layout.Runs[run].Tube.Bore.Meters * (1 + 1e-9))
            .OrderBy(tube => tube.Bore.Meters).Select(tube => Change(flowCase, run, tube)).OfType<LayoutChange>().Take(most);

    /// <summary>A run in the document's own tubes of smaller bore, the next size first.</summary>
    public static IEnumerable<LayoutChange> Narrower(FlowCase flowCase, int run, int most) =>
        Own(flowCase, run, tube => tube.Bore.Meters < flowCase.Layout.Runs[run].Tube.Bore.Meters * (1 - 1e-9))
            .OrderByDescending(tube => tube.Bore.Meters).Select(tube => Change(flowCase, run, tube)).OfType<LayoutChange>().Take(most);

    /// <summary>A run in tubes of the catalogue of larger bore, of its own material where there are any, the next size first.</summary>
    public static IEnumerable<LayoutChange> WiderOfCatalogue(FlowCase flowCase, int run, int most)
    {
        var now = flowCase.Layout.Runs[run].Tube;
        var wider = TubeCatalogue.All.Where(tube => tube.Bore.Meters > now.Bore.Meters * (1 + 1e-9)).ToArray();
        var alike = wider.Where(tube => string.Equals(tube.Material, now.Material, StringComparison.OrdinalIgnoreCase)).ToArray();
        return (alike.Length > 0 ? alike : wider)
            .GroupBy(tube => Math.Round(tube.Bore.Millimeters, 6)).OrderBy(size => size.Key)
            .Select(size => Change(flowCase, run, TubeReader.Of(size.First(), flowCase.Ambient))).OfType<LayoutChange>().Take(most);
    }

    /// <summary>A run with a bore of its own in the larger bores that other legs of the same point have of their own, the next size first.</summary>
    public static IEnumerable<LayoutChange> AsSibling(FlowCase flowCase, int index, int most)
    {
        var run = flowCase.Layout.Runs[index];
        if (run.Tube.Name is not null) return [];
        var bores = new SortedSet<double>();
        foreach (var sibling in flowCase.Leaving(run.From))
            if (flowCase.Layout.Runs[sibling].Tube is { Name: null } tube && tube.Bore.Meters > run.Tube.Bore.Meters * (1 + 1e-9)) bores.Add(tube.Bore.Meters);
        return bores.Select(bore => Bored(flowCase, index, run.Tube with { Bore = Length.FromMeters(bore) })).OfType<LayoutChange>().Take(most);
    }

    static LayoutChange? Bored(FlowCase flowCase, int index, Tube tube)
    {
        var run = flowCase.Layout.Runs[index];
        return Change(flowCase, index, tube) is not { } change ? null
            : change with { Change = new CureChange($"runs/{run.Id}/bore", Wording.Of(run.Tube.Bore, flowCase.Units), Wording.Of(tube.Bore, flowCase.Units)) };
    }

    static IEnumerable<Tube> Own(FlowCase flowCase, int run, Func<Tube, bool> fits) =>
        flowCase.Layout.Tubes.Where(tube => tube.Name is not null && fits(tube));

    static LayoutChange? Change(FlowCase flowCase, int index, Tube tube)
    {
        var run = flowCase.Layout.Runs[index];
        var (changed, doubt) = Rebending.InTube(flowCase, run, tube);
        if (changed is null || IsTooRough(run, tube)) return null;
        doubt ??= TooWeak(flowCase, tube);
        var before = run.Tube.Name ?? Wording.Tube(run.Tube, flowCase.Units);
        var words = $"{Wording.Tube(tube, flowCase.Units)} instead of {Wording.Tube(run.Tube, flowCase.Units)} in {Wording.Id(run.Id)}";
        return new LayoutChange(new CureChange($"runs/{run.Id}/tube", before, tube.Name ?? Wording.Tube(tube, flowCase.Units)), words,
            flowCase.Layout with { Runs = flowCase.Layout.Runs.SetItem(index, changed) }, run.Length.Meters,
            Math.Abs(tube.Bore.Meters - run.Tube.Bore.Meters), doubt);
    }

    // The reader would refuse a fitting whose own bore the tube's roughness nearly fills.
    static bool IsTooRough(Run run, Tube tube) =>
        run.Fittings.Any(placed => TubeRoughness.IsTooMuchFor(placed.Fitting, tube));

    // A wider tube of the same wall bears less; what stands in it while every outlet is shut is the reservoir's pressure.
    static string? TooWeak(FlowCase flowCase, Tube tube) =>
        tube.WorkingPressure is { } marked && flowCase.Flow.Supply is { } supply && marked < supply.ReservoirPressure
            ? $"{Wording.Id(tube.Name ?? "the tube")} is marked for no more than {Wording.Gauge(marked.Pascals, flowCase)}"
            : null;
}
