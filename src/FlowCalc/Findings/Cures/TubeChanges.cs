using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>Runs in another tube: the document's own sizes first, then the catalogue's. A run that gives its own bore gets another bore.</summary>
static class TubeChanges
{
    const double Hair = 1e-9;

    /// <summary>A run in the document's own tubes of larger bore, the next size first.</summary>
    public static IEnumerable<LayoutChange> Wider(JudgedLayout judged, int run, int most) =>
        Changes(judged, run, judged.Layout.Tubes.Where(tube => IsWider(tube.Bore, judged, run)).OrderBy(tube => tube.Bore.Meters), most);

    /// <summary>A run in the document's own tubes of smaller bore, the next size first.</summary>
    public static IEnumerable<LayoutChange> Narrower(JudgedLayout judged, int run, int most) =>
        Changes(judged, run, judged.Layout.Tubes.Where(tube => IsNarrower(tube.Bore, judged, run)).OrderByDescending(tube => tube.Bore.Meters), most);

    /// <summary>A run in tubes of the catalogue of larger bore, of its own material where there are any, the next size first.</summary>
    public static IEnumerable<LayoutChange> WiderOfCatalogue(JudgedLayout judged, int run, int most) =>
        Changes(judged, run, OfCatalogue(judged, run, tube => IsWider(tube.Bore, judged, run)).OrderBy(tube => tube.Bore.Meters), most);

    /// <summary>A run in tubes of the catalogue of smaller bore, of its own material where there are any, the next size first.</summary>
    public static IEnumerable<LayoutChange> NarrowerOfCatalogue(JudgedLayout judged, int run, int most) =>
        Changes(judged, run, OfCatalogue(judged, run, tube => IsNarrower(tube.Bore, judged, run)).OrderByDescending(tube => tube.Bore.Meters), most);

    /// <summary>A run in tubes that bear a pressure, the document's own first, the nearest bore first.</summary>
    public static IEnumerable<LayoutChange> Stronger(JudgedLayout judged, int run, double pressure, int most)
    {
        // A bore given in the run itself has no mark.
        if (judged.Layout.Runs[run].Tube.Name is null) return [];
        bool Bears(Tube tube) => tube.WorkingPressure is { } mark && !WorkingPressures.IsOver(pressure, mark.Pascals);
        return Nearest(judged, run, judged.Layout.Tubes.Where(Bears), most)
            .Concat(Nearest(judged, run, OfCatalogue(judged, run, tube => tube.WorkingPressure is { } mark && mark.Pascals + judged.Ambient >= pressure), most));
    }

    /// <summary>A run in the document's own tubes that allow a smaller radius, the nearest bore first.</summary>
    public static IEnumerable<LayoutChange> Bendable(JudgedLayout judged, int run, int most)
    {
        var limit = judged.FlowLimit(FindingCodes.BendTooTight);
        if (Bends.Least(judged.Layout.Runs[run].Tube, limit) is not var (least, _)) return [];
        return Nearest(judged, run, judged.Layout.Tubes.Where(tube => Bends.Least(tube, limit) is var (radius, _) && radius < least * (1 - Hair)), most);
    }

    /// <summary>A run with a bore of its own in the larger bores that other legs of the same point have of their own, the next size first.</summary>
    public static IEnumerable<LayoutChange> AsSibling(JudgedLayout judged, int index, int most)
    {
        var run = judged.Layout.Runs[index];
        if (run.Tube.Name is not null) return [];
        var bores = new SortedSet<double>();
        foreach (var sibling in judged.Leaving(run.From))
            if (judged.Layout.Runs[sibling].Tube is { Name: null } tube && IsWider(tube.Bore, judged, index)) bores.Add(tube.Bore.Meters);
        return Changes(judged, index, bores.Select(bore => run.Tube with { Bore = Length.FromMeters(bore) }), most);
    }

    static bool IsWider(Length bore, JudgedLayout judged, int run) => bore.Meters > judged.Layout.Runs[run].Tube.Bore.Meters * (1 + Hair);

    static bool IsNarrower(Length bore, JudgedLayout judged, int run) => bore.Meters < judged.Layout.Runs[run].Tube.Bore.Meters * (1 - Hair);

    // An id that the document gives to a tube of its own means that tube.
    static IEnumerable<Tube> OfCatalogue(JudgedLayout judged, int run, Func<CatalogueTube, bool> fits)
    {
        var now = judged.Layout.Runs[run].Tube;
        var known = TubeCatalogue.All.Where(tube => fits(tube) && !judged.Layout.Tubes.Any(own => own.Name == tube.Id)).ToArray();
        var alike = known.Where(tube => string.Equals(tube.Material, now.Material, StringComparison.OrdinalIgnoreCase)).ToArray();
        return (alike.Length > 0 ? alike : known).GroupBy(tube => Math.Round(tube.Bore.Millimeters, 6)).Select(size => TubeReader.Of(size.First(), judged.Ambient));
    }

    static IEnumerable<LayoutChange> Nearest(JudgedLayout judged, int run, IEnumerable<Tube> tubes, int most)
    {
        var now = judged.Layout.Runs[run].Tube;
        return Changes(judged, run, tubes.Where(tube => tube.Name != now.Name).OrderBy(tube => LayoutChange.StepOf(now.Bore.Meters, tube.Bore.Meters)), most);
    }

    static IEnumerable<LayoutChange> Changes(JudgedLayout judged, int run, IEnumerable<Tube> tubes, int most) =>
        tubes.Select(tube => Change(judged, run, tube)).OfType<LayoutChange>().Take(most);

    static LayoutChange? Change(JudgedLayout judged, int index, Tube tube)
    {
        var run = judged.Layout.Runs[index];
        CureChange change;
        if (run.Tube.Name is { } name) change = new(EditPath.Of("runs", run.Id, "tube"), name, tube.Name!);
        else
        {
            var bore = SizeText.Of(tube.Bore.Meters, QuantityKind.Length, judged.Units);
            tube = run.Tube with { Bore = Length.FromMeters(bore.Si) };
            change = new(EditPath.Of("runs", run.Id, "bore"), Wording.Of(run.Tube.Bore, judged.Units), bore.Text);
        }
        var (changed, doubt) = Rebending.InTube(judged, run, tube);
        if (changed is null || IsTooRough(run, tube)) return null;
        var words = $"{Wording.Tube(tube, judged.Units)} instead of {Wording.Tube(run.Tube, judged.Units)} in {Wording.Id(run.Id)}";
        return new LayoutChange([change], words, judged.Layout with { Runs = judged.Layout.Runs.SetItem(index, changed) }, run.Length.Meters,
            LayoutChange.StepOf(run.Tube.Bore.Meters, tube.Bore.Meters), doubt ?? TooWeak(judged, tube));
    }

    // The reader would refuse a bore that the tube's roughness nearly fills, the run's or a fitting's own.
    static bool IsTooRough(Run run, Tube tube) =>
        tube.Roughness.Meters > TubeRoughness.MostOfBore * tube.Bore.Meters || run.Fittings.Any(placed => TubeRoughness.IsTooMuchFor(placed.Fitting, tube));

    // A wider tube of the same wall bears less; what stands in it while every outlet is shut is the reservoir's pressure.
    static string? TooWeak(JudgedLayout judged, Tube tube) =>
        tube.WorkingPressure is { } marked && judged.Reservoir is { } reservoir && marked.Pascals < reservoir
            ? $"{Wording.Id(tube.Name ?? "the tube")} is marked for no more than {Wording.Gauge(marked.Pascals, judged)}"
            : null;
}
