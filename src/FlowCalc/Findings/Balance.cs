using FlowCalc.Findings.Cures;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Everything about shares: nozzles, zones, the legs to blame, and the change that mends them.</summary>
static class Balance
{
    public static void Find(FlowCase flowCase, Trials trials, FindingList findings)
    {
        var starved = NozzleShares.Starved(flowCase);
        var overfed = NozzleShares.Overfed(flowCase);
        var zones = ZoneShares.Starved(flowCase);
        if (starved is null && overfed is null && zones is null) return;

        var costs = new BranchCosts(flowCase);
        var (best, tried) = BalanceSearch.Run(flowCase, costs, trials, anyStarved: starved is not null || zones is not null);
        var cure = best is null ? null : new BalanceCure(flowCase, best);
        var noCure = best is null ? $"; no cure found, {tried}" : "";
        var byPoint = new Dictionary<int, int>();
        for (var nozzle = 0; nozzle < flowCase.Flow.Nozzles.Length; nozzle++)
        {
            flowCase.Pass(nozzle);
            byPoint[flowCase.Flow.Nozzles[nozzle].Point] = nozzle;
        }

        findings.Add(FindingCodes.StarvedNozzle, flowCase.Limit(FindingCodes.StarvedNozzle).Source, null, "nozzle", starved,
            hit => NozzleShares.Sentence(flowCase, byPoint[hit.Item], hit), hit => cure?.OfNozzle(byPoint[hit.Item]), noCure);
        findings.Add(FindingCodes.OverfedNozzle, flowCase.Limit(FindingCodes.OverfedNozzle).Source, null, "nozzle", overfed,
            hit => NozzleShares.Sentence(flowCase, byPoint[hit.Item], hit), hit => cure?.OfNozzle(byPoint[hit.Item]), noCure);
        findings.Add(FindingCodes.StarvedZone, flowCase.Limit(FindingCodes.StarvedZone).Source, null, "zone", zones,
            hit => ZoneShares.Sentence(flowCase, hit), hit => cure?.OfZone(hit.Item), noCure);
        if (starved is not null) AddBranches(flowCase, costs, cure, noCure, findings);
    }

    static void AddBranches(FlowCase flowCase, BranchCosts costs, BalanceCure? cure, string noCure, FindingList findings)
    {
        var limit = flowCase.Limit(FindingCodes.UnevenBranch);
        foreach (var branch in UnevenBranches.Of(flowCase, costs))
        {
            var (severity, step) = UnevenBranches.Grade(flowCase, branch);
            var leg = flowCase.Layout.Runs[branch.Leg];
            string[] where = [flowCase.PointId(leg.From), leg.Id, .. branch.Dearest == branch.Leg ? [] : new[] { flowCase.RunId(branch.Dearest) },
                .. branch.Starved.Take(FindingList.MostIds - 3).Select(nozzle => flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point))];
            findings.Add(new Finding(FindingCodes.UnevenBranch, severity, [.. where], $"{UnevenBranches.Sentence(flowCase, branch, step)}{noCure}.",
                new Measure(UnevenBranches.Deviation(flowCase, branch.Worst), null), new Measure(-step, null), limit.Source, cure?.OfNozzle(branch.Worst)), branch.Leg);
        }
    }
}
