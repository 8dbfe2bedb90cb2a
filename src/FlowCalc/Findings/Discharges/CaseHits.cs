using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>What one rule finds case by case: each place once, in its worst case, with the number of others.</summary>
/// <param name="judged">The discharge.</param>
/// <param name="isOfTemperature">Whether what is found is the same in every attitude of a temperature, so that only temperatures count.</param>
sealed class CaseHits(JudgedDischarge judged, bool isOfTemperature = false)
{
    readonly SortedDictionary<int, Place> places = [];

    /// <summary>Adds what was found in a case; a hit's item tells one place from another. A number that is not known is NaN.</summary>
    public void Add(int at, Hit hit)
    {
        if (!places.TryGetValue(hit.Item, out var place))
        {
            places.Add(hit.Item, new Place(hit, at, [at]));
            return;
        }
        place.Cases.Add(at);
        // The first of equals stays, in the order of the cases.
        if ((hit.Severity, hit.Badness).CompareTo((place.Worst.Severity, place.Worst.Badness)) > 0) places[hit.Item] = place with { Worst = hit, At = at };
    }

    /// <summary>Makes findings of all places, gathered as those of a flow are.</summary>
    /// <param name="findings">What to add to.</param>
    /// <param name="code">The code.</param>
    /// <param name="source">Whose limit it is.</param>
    /// <param name="kind">What is measured; null for a plain number.</param>
    /// <param name="noun">What a place is, such as <c>nozzle</c>.</param>
    /// <param name="sentence">What is so in the worst case, to follow "At -15 °C, on the roof,"; without a full stop.</param>
    public void AddTo(FindingList findings, string code, string source, QuantityKind? kind, string noun, Func<DischargeCase, Hit, string> sentence) =>
        findings.Add(code, source, kind, noun, places.Count == 0 ? null : [.. places.Values.Select(place => place.Worst)],
            hit => Told(places[hit.Item], sentence), hit => (Name(places[hit.Item]), places[hit.Item].At));

    /// <summary>Makes a finding of each place that is not one point or run.</summary>
    /// <param name="findings">What to add to.</param>
    /// <param name="code">The code.</param>
    /// <param name="source">Whose limit it is.</param>
    /// <param name="kind">What is measured; null for a plain number.</param>
    /// <param name="where">The ids that it concerns in the worst case.</param>
    /// <param name="sentence">What is so in the worst case, to follow "At -15 °C, on the roof,"; without a full stop.</param>
    public void AddTo(
        FindingList findings, string code, string source, QuantityKind? kind, Func<DischargeCase, ImmutableArray<string>> where, Func<DischargeCase, Hit, string> sentence)
    {
        foreach (var place in places.Values)
        {
            var hit = place.Worst;
            findings.Add(
                new Finding(code, hit.Severity, where(Case(place)), $"{Told(place, sentence)}.", Measured(hit.Measured, kind), Measured(hit.Bound, kind), source, null, Name(place)),
                hit.Item, place.At);
        }
    }

    string Told(Place place, Func<DischargeCase, Hit, string> sentence) =>
        $"At {Name(place)}{(isOfTemperature ? "" : ",")} {sentence(Case(place), place.Worst)}{Others(place)}";

    string Name(Place place) => isOfTemperature ? judged.TemperatureOf(Case(place)) : judged.Name(Case(place));

    string Others(Place place)
    {
        var others = isOfTemperature
            ? place.Cases.Select(at => judged.Discharge.Cases[at].Temperature.Kelvins).Distinct().Count() - 1
            : place.Cases.Count - 1;
        if (others == 0) return "";
        if (isOfTemperature) return $"; also, and no worse, at {Wording.Count(others, "other temperature")}";
        return others > 1 && others == judged.Discharge.Cases.Length - 1 ? "; also, and no worse, in every other case" : $"; also, and no worse, in {Wording.Count(others, "other case")}";
    }

    DischargeCase Case(Place place) => judged.Discharge.Cases[place.At];

    static Measure? Measured(double value, QuantityKind? kind) => double.IsNaN(value) ? null : new Measure(value, kind);

    readonly record struct Place(Hit Worst, int At, List<int> Cases);
}
