
namespace FlowCalc.Findings.CutLists;

/// <summary>Bends and fittings that have no place along their run, so that nothing can be marked or cut there.</summary>
static class Unplaced
{
    public static void Find(JudgedCutList judged, FindingList findings)
    {
        List<Hit>? bends = null, fittings = null;
        foreach (var (index, run, cut) in judged.Runs)
        {
            if (cut.UnplacedBends > 0) (bends ??= []).Add(new Hit(index, run.Id, Severity.Note, cut.UnplacedBends, cut.UnplacedBends, 0));
            if (cut.UnplacedFittings > 0) (fittings ??= []).Add(new Hit(index, run.Id, Severity.Warn, cut.UnplacedFittings, cut.UnplacedFittings, 0));
        }
        findings.Add(FindingCodes.BendPlacesUnknown, "the document", null, "run", bends, hit =>
            $"{Wording.Id(hit.Id)} is given by its length: {Counted(hit, "bend", "is", "are")} counted in it and {(hit.Measured == 1 ? "has no place" : "have no places")} to mark; "
            + "give places (at) to its points and its corners (via) for marks");
        findings.Add(FindingCodes.FittingWithoutPlace, "the document", null, "run", fittings, hit =>
            $"{Counted(hit, "fitting", "has", "have")} no place of {(hit.Measured == 1 ? "its" : "their")} own in {Wording.Id(hit.Id)}: its tube is not cut there in this list; give at, and one entry each");
    }

    static string Counted(Hit hit, string noun, string one, string several) =>
        hit.Measured == 1 ? $"1 {noun} {one}" : $"{hit.Measured.ToString(System.Globalization.CultureInfo.InvariantCulture)} {noun}s {several}";
}
