using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>What a gas or a liquefied gas does in its cases: over its critical temperature, outside what was checked, filling the tubes, or at its triple point.</summary>
static class ExpandingStates
{
    const string Data = "the agent's data";

    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        if (judged.Layout.Agent is not ExpandingAgent agent) return;
        AgentFits.Find(judged, findings);
        OfTemperatures(judged, agent, findings);
        InTubes(judged, findings);
        AtTriplePoint(judged, agent, findings);
        WouldCondense(judged, agent, findings);
    }

    static void OfTemperatures(JudgedDischarge judged, ExpandingAgent agent, FindingList findings)
    {
        CaseHits critical = new(judged, isOfTemperature: true), beyond = new(judged, isOfTemperature: true);
        foreach (var (at, one) in judged.Answered)
        {
            var temperature = one.Temperature.Kelvins;
            if (AgentFits.IsAboveCritical(agent, temperature)) critical.Add(at, new Hit(-1, judged.SupplyId, Severity.Note, temperature, temperature, agent.CriticalTemperature!.Value));
            var (by, end) = AgentFits.OutsideAnchor(agent, temperature);
            if (by > 0) beyond.Add(at, new Hit(-1, judged.SupplyId, Severity.Note, by, temperature, end));
        }
        critical.AddTo(findings, FindingCodes.AboveCriticalTemperature, Data, QuantityKind.Temperature, _ => [judged.SupplyId], (_, _) => AgentFits.AboveCritical(agent, judged));
        beyond.AddTo(findings, FindingCodes.OutsideCheckedRange, Data, QuantityKind.Temperature, _ => [judged.SupplyId], (_, hit) => AgentFits.BeyondAnchor(hit.Bound, judged));
    }

    static void InTubes(JudgedDischarge judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.AgentInTube);
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
        {
            if (one.MostInTubes is not { } most) continue;
            var part = most.Kilograms / judged.Contents;
            var (severity, step) = Grading.Of(limit, part);
            if (severity != Severity.Pass) hits.Add(at, new Hit(-1, judged.SupplyId, severity, part, part, step));
        }
        hits.AddTo(findings, FindingCodes.AgentInTube, limit.Source, null, _ => [judged.SupplyId], (_, hit) => hit.Severity switch
        {
            Severity.Note => $"the tubes hold up to {Wording.Percent(hit.Measured, hit.Bound)} of the contents, limit {Wording.Percent(hit.Bound)}",
            Severity.Warn => $"the tubes hold up to {Wording.Percent(hit.Measured, hit.Bound)} of the contents, limit {Wording.Percent(hit.Bound)}: times and early shares are little to be trusted",
            _ => $"the tubes hold up to {Wording.Percent(hit.Measured, hit.Bound)} of the contents, limit {Wording.Percent(hit.Bound)}: the method does not hold for so much tube, and the figures of this case are not to be used",
        });
    }

    static void WouldCondense(JudgedDischarge judged, ExpandingAgent agent, FindingList findings)
    {
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
            if (one.ColdestGas is { } coldest && coldest.Kelvins < agent.Fluid.ContinuedBelow)
                hits.Add(at, new Hit(-1, judged.SupplyId, Severity.Note, -coldest.Kelvins, coldest.Kelvins, agent.Fluid.ContinuedBelow));
        hits.AddTo(findings, FindingCodes.GasWouldCondense, Data, QuantityKind.Temperature, _ => [judged.SupplyId], (_, hit) =>
            $"the gas in the bottle falls to {Wording.Of(hit.Measured, QuantityKind.Temperature, judged.Units)}, where it would begin to condense; it was followed as a gas, and the end of the discharge is rough");
    }

    static void AtTriplePoint(JudgedDischarge judged, ExpandingAgent agent, FindingList findings)
    {
        var hits = new CaseHits(judged);
        foreach (var (at, one) in judged.Answered)
            if (one.Reason == StopReason.TriplePoint)
                hits.Add(at, new Hit(-1, judged.SupplyId, Severity.Warn, one.LeftInBottle.Kilograms, one.LeftInBottle.Kilograms / judged.Contents, double.NaN));
        hits.AddTo(findings, FindingCodes.TriplePoint, "physics; snow is not followed", null, _ => [judged.SupplyId], (one, hit) =>
            $"the bottle comes to the triple point of {agent.Title} after {Wording.Of(one.End.Seconds, QuantityKind.Time, judged.Units)} with {Wording.Of(one.LeftInBottle.Kilograms, QuantityKind.Mass, judged.Units)} in it, {Wording.Percent(hit.Measured)} of the contents: "
            + "what is left turns to snow and comes out slowly, which is not followed");
    }
}
