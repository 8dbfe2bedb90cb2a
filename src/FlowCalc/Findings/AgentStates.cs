using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>What a gas or a liquefied gas is at the temperature of a steady flow, and where it chokes and divides.</summary>
static class AgentStates
{
    // Tubes laid by hand are level to a few degrees.
    const double Level = 6 * Math.PI / 180;
    const string Trade = "common practice of makers' design manuals (from memory)";

    public static void Find(FlowCase flowCase, FindingList findings)
    {
        if (flowCase.Layout.Agent is not ExpandingAgent agent) return;
        AgentFits.Find(flowCase, findings);
        OfTemperature(flowCase, agent, findings);
        Choked(flowCase, findings);
        if (agent.Kind != AgentKind.InertGas) TiltedTees(flowCase, findings);
    }

    static void OfTemperature(FlowCase flowCase, ExpandingAgent agent, FindingList findings)
    {
        var temperature = flowCase.Layout.Temperature.Kelvins;
        var at = $"At {Wording.Of(temperature, QuantityKind.Temperature, flowCase.Units)}";
        var supply = flowCase.PointId(flowCase.SupplyPoint);
        if (AgentFits.IsAboveCritical(agent, temperature))
            findings.Add(new Finding(FindingCodes.AboveCriticalTemperature, Severity.Note, [supply], $"{at} {AgentFits.AboveCritical(agent, flowCase)}.",
                new Measure(temperature, QuantityKind.Temperature), new Measure(agent.CriticalTemperature!.Value, QuantityKind.Temperature), "the agent's data", null), -1);
        if (flowCase.Layout.Supply is BottleSupply && AgentFits.OutsideAnchor(agent, temperature) is { By: > 0, End: var end })
            findings.Add(new Finding(FindingCodes.OutsideCheckedRange, Severity.Note, [supply], $"{at} {AgentFits.BeyondAnchor(end, flowCase)}.",
                new Measure(temperature, QuantityKind.Temperature), new Measure(end, QuantityKind.Temperature), "the agent's data", null), -1);
    }

    static void Choked(FlowCase flowCase, FindingList findings)
    {
        List<int>? choked = null;
        for (var run = 0; run < flowCase.Flow.Runs.Length; run++)
        {
            flowCase.Pass(run);
            if (flowCase.Flow.Runs[run].IsChoked) (choked ??= []).Add(run);
        }
        if (choked is null) return;
        string[] ids = [.. choked.Take(FindingList.MostIds).Select(flowCase.RunId)];
        findings.Add(new Finding(FindingCodes.ChokedRun, Severity.Note, [.. ids],
            $"The flow reaches the speed of sound at the end of {Wording.Ids([.. choked.Select(flowCase.RunId)])}: there the tube, not what lies behind it, sets how much passes; a wider one passes more.",
            null, null, "physics", null), choked[0]);
    }

    static void TiltedTees(FlowCase flowCase, FindingList findings)
    {
        List<Hit>? hits = null;
        for (var point = 0; point < flowCase.Layout.Points.Length; point++)
        {
            flowCase.Pass(point);
            if (flowCase.Layout.Points[point] is not Tee) continue;
            double most = 0;
            foreach (var leg in flowCase.Leaving(point))
                if (flowCase.Layout.Runs[leg].Route is { StartDirection: var start }) most = Math.Max(most, Math.Asin(Math.Min(1, Math.Abs(start.Z) / start.Length)));
            if (Grading.IsBeyond(most, Level)) (hits ??= []).Add(new Hit(point, flowCase.PointId(point), Severity.Warn, most, most, Level));
        }
        findings.Add(FindingCodes.TeeNotLevel, Trade, QuantityKind.Angle, "tee", hits, hit =>
            $"An outlet of {Wording.Id(hit.Id)} leaves {Wording.Of(hit.Measured, QuantityKind.Angle, flowCase.Units)} off the level: liquid and vapour part there by weight, and what each outlet gets of them is not told; lay the tee flat");
    }
}
