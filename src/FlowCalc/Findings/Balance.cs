using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Everything about shares: nozzles, zones and the legs to blame.</summary>
static class Balance
{
    public static void Find(FlowCase flowCase, FindingList findings)
    {
        var starved = NozzleShares.Starved(flowCase);
        var overfed = NozzleShares.Overfed(flowCase);
        var zones = ZoneShares.Starved(flowCase);
        if (starved is null && overfed is null && zones is null) return;

        findings.Add(FindingCodes.StarvedNozzle, flowCase.Limit(FindingCodes.StarvedNozzle).Source, null, "nozzle", starved,
            hit => NozzleShares.Sentence(flowCase, flowCase.NozzleAt(hit.Item), hit));
        findings.Add(FindingCodes.OverfedNozzle, flowCase.Limit(FindingCodes.OverfedNozzle).Source, null, "nozzle", overfed,
            hit => NozzleShares.Sentence(flowCase, flowCase.NozzleAt(hit.Item), hit));
        findings.Add(FindingCodes.StarvedZone, flowCase.Limit(FindingCodes.StarvedZone).Source, null, "zone", zones, hit => ZoneShares.Sentence(flowCase, hit));
        if (starved is not null) AddBranches(flowCase, findings);
    }

    static void AddBranches(FlowCase flowCase, FindingList findings)
    {
        var limit = flowCase.Limit(FindingCodes.UnevenBranch);
        foreach (var branch in UnevenBranches.Of(flowCase, flowCase.Costs))
        {
            var (severity, step) = UnevenBranches.Grade(flowCase, branch);
            var leg = flowCase.Layout.Runs[branch.Leg];
            string[] where = [flowCase.PointId(leg.From), leg.Id, .. branch.Dearest == branch.Leg ? [] : new[] { flowCase.RunId(branch.Dearest) },
                .. branch.Starved.Take(FindingList.MostIds - 3).Select(nozzle => flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point))];
            findings.Add(new Finding(FindingCodes.UnevenBranch, severity, [.. where], $"{UnevenBranches.Sentence(flowCase, branch, step)}.",
                new Measure(UnevenBranches.Deviation(flowCase, branch.Worst), null), new Measure(-step, null), limit.Source, null), branch.Leg);
        }
    }
}
