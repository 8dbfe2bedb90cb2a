namespace FlowCalc.Findings.Coverage;

/// <summary>Cases of the discharge that have no answer: what zones get in them is not known, and may be the least or the most.</summary>
static class UnansweredCases
{
    const int MostNamed = 4;

    public static void Find(JudgedCoverage judged, FindingList findings)
    {
        if (judged.Discharge is not { } discharge) return;
        var failed = Enumerable.Range(0, discharge.Cases.Length).Where(at => discharge.Cases[at].Failure is not null).ToArray();
        if (failed.Length == 0) return;
        var named = string.Join("; ", failed.Take(MostNamed).Select(at => judged.CaseName(at))) + (failed.Length > MostNamed ? $" and {failed.Length - MostNamed} more" : "");
        findings.Add(new Finding(CoverageCodes.CaseNotAnswered, Severity.Fail, [],
            $"{failed.Length} of {Wording.Count(discharge.Cases.Length, "case")} of the discharge {(failed.Length == 1 ? "has" : "have")} no answer ({named}), so that nobody knows what zones get then: {discharge.Cases[failed[0]].Failure!.Message.TrimEnd('.')}.",
            new Quantities.Measure(failed.Length, null), null, "the engine", null, judged.CaseName(failed[0])), -1);
    }
}
