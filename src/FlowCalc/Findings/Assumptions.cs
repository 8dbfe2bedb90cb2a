using System.Collections.Immutable;

namespace FlowCalc.Findings;

/// <summary>One note that says how much of the layout was filled in.</summary>
static class Assumptions
{
    public static void Find(ImmutableArray<Assumption> made, FindingList findings)
    {
        if (made.IsDefaultOrEmpty) return;

        var pointers = made.Select(assumption => assumption.Pointer).Distinct().Take(FindingList.MostIds);
        var first = $"{Wording.Id(made[0].Value)} at {Wording.Id(made[0].Pointer)}";
        findings.Add(new Finding(FindingCodes.AssumptionMade, Severity.Note, [.. pointers],
            made.Length == 1
                ? $"One value was not given and was filled in: {first}."
                : $"{Wording.Count(made.Length, "value")} were not given and were filled in, the first of them {first}; all are listed among the assumptions.",
            new Quantities.Measure(made.Length, null), null, "the document leaves them open", null), -1);
    }
}
