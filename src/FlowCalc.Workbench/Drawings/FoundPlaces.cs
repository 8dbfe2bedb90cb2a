using FlowCalc.Findings;
using FlowCalc.Workbench.Figures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>What was found, by the id of the point or run that it concerns.</summary>
sealed class FoundPlaces
{
    readonly Dictionary<string, List<Finding>> places = new(StringComparer.Ordinal);

    /// <summary>Sorts findings by their places.</summary>
    public FoundPlaces(IEnumerable<Finding> findings)
    {
        foreach (var finding in findings)
            foreach (var id in finding.Where)
            {
                if (!places.TryGetValue(id, out var there)) places[id] = there = [];
                there.Add(finding);
            }
    }

    /// <summary>The worst of what was found at a place.</summary>
    public Severity Worst(string id) => places.TryGetValue(id, out var there) ? there.Max(finding => finding.Severity) : Severity.Pass;

    /// <summary>What was found at a place in words, the worst first; empty for nothing.</summary>
    public string Words(string id) => places.TryGetValue(id, out var there)
        ? string.Concat(there.OrderByDescending(finding => finding.Severity).Select(finding => $" {Severities.Noun(finding.Severity)}: {finding.Message}"))
        : "";
}
