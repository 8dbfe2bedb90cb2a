namespace FlowCalc.Findings.Circuits;

/// <summary>Every rule of a circuit.</summary>
static class CircuitRules
{
    public static FindingList Find(JudgedCircuit judged)
    {
        var findings = new FindingList();
        FiringCurrents.Find(judged, findings);
        CircuitLosses.Find(judged, findings);
        TestCurrents.Find(judged, findings);
        Triggers.Find(judged, findings);
        FuseLoads.Find(judged, findings);
        CapacitorPulses.Find(judged, findings);
        FaultCases.Find(judged, findings);
        Assumptions.Find(judged.Circuit.Assumptions, findings);
        return findings;
    }
}
