using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Stock;

namespace FlowCalc.Findings.CutLists;

/// <summary>Hot places without a sleeve.</summary>
static class HotPlaces
{
    public static void Find(JudgedCutList judged, FindingList findings)
    {
        List<Hit>? hot = null, bare = null;
        foreach (var (index, run, _) in judged.Runs)
            foreach (var place in run.HotPlaces)
            {
                if (place.IsSleeved) continue;
                if (IsTooHot(run, place) is { } most)
                    (hot ??= []).Add(new Hit(index, run.Id, Severity.Warn, place.Temperature!.Value.Kelvins, place.Temperature.Value.Kelvins, most));
                else
                    (bare ??= []).Add(new Hit(index, run.Id, Severity.Warn, (place.To - place.From).Meters, place.From.Meters, 0));
            }
        findings.Add(FindingCodes.HotTube, DefaultLimits.CommonPractice, QuantityKind.Temperature, "place", hot, hit =>
            $"{Wording.Id(hit.Id)} can get {Celsius(judged, hit.Measured)} where it has no sleeve, and its material or skin softens above {Celsius(judged, hit.Bound)}");
        findings.Add(FindingCodes.MissingSleeve, DefaultLimits.CommonPractice, QuantityKind.Length, "place", bare, hit =>
            $"{Wording.Id(hit.Id)} passes something hot {judged.Text(hit.Measured)} from its start without a sleeve");
    }

    static double? IsTooHot(Run run, HotPlace place) =>
        place.Temperature is { } temperature && TubeMaterial.Of(run.Tube.Material)?.Highest is { } most && Grading.IsBeyond(temperature.Kelvins, most.Kelvins) ? most.Kelvins : null;

    static string Celsius(JudgedCutList judged, double kelvin) => Wording.Of(kelvin, QuantityKind.Temperature, judged.Units);
}
