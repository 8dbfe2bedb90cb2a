using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Gathers findings and puts them in order; many of a kind become one.</summary>
/// <param name="tally">Only counts what is found, place by place, and writes no sentence; null to gather.</param>
sealed class FindingList(FindingTally? tally = null)
{
    /// <summary>Ids that one finding names at most.</summary>
    public const int MostIds = 20;

    // Beyond this many warnings or failures of one code the list would hide what is wrong rather than show it.
    const int MostSingles = 10;

    readonly List<(Finding Finding, int Item)> entries = [];

    /// <summary>Whether findings are only counted: then no trial is worth its solve.</summary>
    public bool IsTally => tally is not null;

    public void Add(Finding finding, int item)
    {
        if (tally is null) entries.Add((finding, item));
        else tally.Add(finding.Code, finding.Severity, finding.Where is [var first, ..] ? first : "");
    }

    /// <summary>Adds what a rule found: notes together, warnings and failures one by one up to ten.</summary>
    /// <param name="code">The code.</param>
    /// <param name="source">Whose limit it is.</param>
    /// <param name="kind">What is measured; null for a plain number.</param>
    /// <param name="noun">What a place is, such as <c>run</c>.</param>
    /// <param name="hits">The places, in the document's order.</param>
    /// <param name="sentence">The sentence for one place, without a full stop.</param>
    /// <param name="cure">The cure of one place; null for none.</param>
    /// <param name="ending">What every sentence ends with; empty for nothing.</param>
    /// <param name="inCase">The case of one place; null for none.</param>
    public void Add(string code, string source, QuantityKind? kind, string noun, List<Hit>? hits, Func<Hit, string> sentence, Func<Hit, Cure?>? cure = null, string ending = "",
        Func<Hit, string?>? inCase = null)
    {
        if (hits is null) return;
        if (tally is not null)
        {
            foreach (var hit in hits) tally.Add(code, hit.Severity, hit.Id);
            return;
        }
        for (var severity = Severity.Note; severity <= Severity.Fail; severity++)
        {
            var alike = hits.FindAll(hit => hit.Severity == severity);
            if (alike.Count == 0) continue;
            var together = alike.Count > (severity == Severity.Note ? 1 : MostSingles);
            if (together) AddTogether(code, source, kind, noun, alike, sentence, cure, ending, inCase);
            else foreach (var hit in alike) Add(Single(code, source, kind, hit, $"{sentence(hit)}{ending}.", [hit.Id], cure, inCase), hit.Item);
        }
    }

    public ImmutableArray<Finding> InOrder()
    {
        if (entries.Count == 0) return [];
        return [.. entries
            .OrderByDescending(entry => entry.Finding.Severity)
            .ThenBy(entry => entry.Finding.Code, StringComparer.Ordinal)
            .ThenBy(entry => entry.Item)
            .Select(entry => entry.Finding)];
    }

    void AddTogether(string code, string source, QuantityKind? kind, string noun, List<Hit> hits, Func<Hit, string> sentence, Func<Hit, Cure?>? cure, string ending,
        Func<Hit, string?>? inCase)
    {
        var worstFirst = hits.OrderByDescending(hit => hit.Badness).ThenBy(hit => hit.Item).Take(MostIds).ToArray();
        var worst = worstFirst[0];
        var message = $"{sentence(worst)}; so it is, and no worse, with {Wording.Count(hits.Count - 1, "other " + noun)}{ending}.";
        Add(Single(code, source, kind, worst, message, [.. worstFirst.Select(hit => hit.Id)], cure, inCase), hits[0].Item);
    }

    static Finding Single(string code, string source, QuantityKind? kind, Hit hit, string message, ImmutableArray<string> where, Func<Hit, Cure?>? cure,
        Func<Hit, string?>? inCase) =>
        new(code, hit.Severity, where, message, new Measure(hit.Measured, kind), new Measure(hit.Bound, kind), source, cure?.Invoke(hit), inCase?.Invoke(hit));
}
