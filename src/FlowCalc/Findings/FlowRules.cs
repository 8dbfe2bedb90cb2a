using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>The rules of a steady flow, all of them.</summary>
static class FlowRules
{
    /// <summary>What they find, without cures and without any solve, save one where a tee's body is not given.</summary>
    public static FindingList Find(FlowCase flowCase)
    {
        var findings = new FindingList();
        Judge(flowCase, findings);
        TeeBodies.Find(flowCase, findings);
        Assumptions.Find(flowCase.Flow.Assumptions, findings);
        return findings;
    }

    /// <summary>Where they find something worse than a note, and how bad it is.</summary>
    public static FindingList FindPlaces(FlowCase flowCase)
    {
        var findings = new FindingList(isBare: true);
        Judge(flowCase, findings);
        return findings;
    }

    /// <summary>Adds what they find that needs no solve.</summary>
    public static void Judge(FlowCase flowCase, FindingList findings)
    {
        Balance.Find(flowCase, findings);
        NozzlePressures.Spread(flowCase, findings);
        VapourPressures.Find(flowCase, findings);
        Ranges(flowCase, findings);
        RunVelocities.Find(flowCase, findings);
        RunVelocities.Transition(flowCase, findings);
        TeeSplits.Find(flowCase, findings);
        TeePorts.Find(flowCase, findings);
        Bends.TooTight(flowCase, findings);
        Bends.Overlap(flowCase, findings);
        Bends.Interact(flowCase, findings);
        WorkingPressures.Find(flowCase, findings);
        BottleFilling.Find(flowCase, findings);
        AgentStates.Find(flowCase, findings);
        CorrelationRanges.Find(flowCase, findings);
    }

    static void Ranges(FlowCase flowCase, FindingList findings)
    {
        findings.Add(FindingCodes.NozzleBelowRange, NozzlePressures.Statement, QuantityKind.Pressure, "nozzle", NozzlePressures.BelowRange(flowCase), hit => NozzlePressures.Sentence(flowCase, hit));
        findings.Add(FindingCodes.NozzleAboveRange, NozzlePressures.Statement, QuantityKind.Pressure, "nozzle", NozzlePressures.AboveRange(flowCase), hit => NozzlePressures.Sentence(flowCase, hit));
    }
}
