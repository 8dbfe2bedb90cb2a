using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Gathers findings and puts them in order; many of a kind become one.</summary>
/// <param name="tally">Only counts what is found, place by place, and writes no sentence; null to gather.</param>
/// <param name="isBare">Whether only places are asked for, so that no sentence has to be written for hits.</param>
sealed class FindingList(FindingTally? tally = null, bool isBare = false)
{
    /// <summary>Ids that one finding names at most.</summary>
    public const int MostIds = 20;

    // Beyond this many warnings or failures of one code the list would hide what is wrong rather than show it.
    const int MostSingles = 10;

    readonly List<FoundEntry> entries = [];
    readonly Dictionary<(string Code, int Item), Severity> places = [];

    /// <summary>What was found, in the order in which it was added.</summary>
    public IReadOnlyList<FoundEntry> Entries => entries;

    /// <summary>Every place with the worst that was found there, gathered or not.</summary>
    public IReadOnlyDictionary<(string Code, int Item), Severity> Places => places;

    /// <summary>The worst severity of all.</summary>
    public Severity Verdict => entries.Count == 0 ? Severity.Pass : entries.Max(entry => entry.Finding.Severity);

    /// <summary>Adds a finding.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="item">Its place in the document's order; -1 for one of no place.</param>
    /// <param name="at">Index of its case; -1 for none.</param>
    public void Add(Finding finding, int item, int at = -1)
    {
        if (tally is not null)
        {
            tally.Add(finding.Code, finding.Severity, finding.Where is [var first, ..] ? first : "");
            return;
        }
        entries.Add(new(finding, item, IsMany: false, at));
        Mark(finding.Code, item, finding.Severity);
    }

    /// <summary>Adds what a rule found: notes together, warnings and failures one by one up to ten.</summary>
    /// <param name="code">The code.</param>
    /// <param name="source">Whose limit it is.</param>
    /// <param name="kind">What is measured; null for a plain number.</param>
    /// <param name="noun">What a place is, such as <c>run</c>.</param>
    /// <param name="hits">The places, in the document's order.</param>
    /// <param name="sentence">The sentence for one place, without a full stop.</param>
    /// <param name="inCase">The case of one place, by name and index; null for none.</param>
    public void Add(string code, string source, QuantityKind? kind, string noun, List<Hit>? hits, Func<Hit, string> sentence, Func<Hit, (string? Name, int At)>? inCase = null)
    {
        if (hits is null) return;
        if (tally is not null)
        {
            foreach (var hit in hits) tally.Add(code, hit.Severity, hit.Id);
            return;
        }
        foreach (var hit in hits) Mark(code, hit.Item, hit.Severity);
        if (isBare) return;
        for (var severity = Severity.Note; severity <= Severity.Fail; severity++)
        {
            var alike = hits.FindAll(hit => hit.Severity == severity);
            if (alike.Count == 0) continue;
            var together = alike.Count > (severity == Severity.Note ? 1 : MostSingles);
            if (together) AddTogether(code, source, kind, noun, alike, sentence, inCase);
            else foreach (var hit in alike) entries.Add(Single(code, source, kind, hit, hit.Item, $"{sentence(hit)}.", [hit.Id], inCase));
        }
    }

    /// <summary>Puts a finding in the place of another, which it is but for what is told with it.</summary>
    public void Replace(int entry, Finding finding) => entries[entry] = entries[entry] with { Finding = finding };

    /// <summary>How many findings have a severity.</summary>
    public int Count(Severity severity) => entries.Count(entry => entry.Finding.Severity == severity);

    public ImmutableArray<Finding> InOrder()
    {
        if (entries.Count == 0) return [];
        return [.. entries
            .OrderByDescending(entry => entry.Finding.Severity)
            .ThenBy(entry => entry.Finding.Code, StringComparer.Ordinal)
            .ThenBy(entry => entry.Item)
            .Select(entry => entry.Finding)];
    }

    void Mark(string code, int item, Severity severity)
    {
        if (!places.TryGetValue((code, item), out var known) || severity > known) places[(code, item)] = severity;
    }

    void AddTogether(string code, string source, QuantityKind? kind, string noun, List<Hit> hits, Func<Hit, string> sentence, Func<Hit, (string? Name, int At)>? inCase)
    {
        var worstFirst = hits.OrderByDescending(hit => hit.Badness).ThenBy(hit => hit.Item).Take(MostIds).ToArray();
        var worst = worstFirst[0];
        var message = $"{sentence(worst)}; so it is, and no worse, with {Wording.Count(hits.Count - 1, "other " + noun)}.";
        entries.Add(Single(code, source, kind, worst, hits[0].Item, message, [.. worstFirst.Select(hit => hit.Id)], inCase) with { IsMany = true, Worst = worst.Item });
    }

    static FoundEntry Single(string code, string source, QuantityKind? kind, Hit hit, int item, string message, ImmutableArray<string> where, Func<Hit, (string? Name, int At)>? inCase)
    {
        var (name, at) = inCase?.Invoke(hit) ?? (null, -1);
        return new(new(code, hit.Severity, where, message, new Measure(hit.Measured, kind), new Measure(hit.Bound, kind), source, null, name), item, IsMany: false, at) { Worst = hit.Item };
    }
}
