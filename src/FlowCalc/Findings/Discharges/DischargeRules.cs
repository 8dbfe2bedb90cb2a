namespace FlowCalc.Findings.Discharges;

/// <summary>The rules of a discharge, all of them.</summary>
static class DischargeRules
{
    /// <summary>What they find, without cures.</summary>
    public static FindingList Find(JudgedDischarge judged)
    {
        var findings = new FindingList();
        Find(judged, findings);
        return findings;
    }

    /// <summary>Adds what they find.</summary>
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        AtRest(judged, findings);
        RequiredTimes.Find(judged, findings);
        DeliveredParts.Find(judged, findings);
        DipTubes.Find(judged, findings);
        MassShares.Find(judged, findings);
        Arrivals.Find(judged, findings);
        PressureRanges.Find(judged, findings);
        LineSurges.Find(judged, findings);
        ExpandingStates.Find(judged, findings);
        Assumptions.Find(judged.Discharge.Assumptions, findings);
    }

    /// <summary>What those find that look at the bottle before its valve opens.</summary>
    public static FindingList FindAtRest(JudgedDischarge judged)
    {
        var findings = new FindingList();
        AtRest(judged, findings);
        return findings;
    }

    static void AtRest(JudgedDischarge judged, FindingList findings)
    {
        CaseFailures.Find(judged, findings);
        LiquidParts.Find(judged, findings);
        RestPressures.Find(judged, findings);
    }
}
