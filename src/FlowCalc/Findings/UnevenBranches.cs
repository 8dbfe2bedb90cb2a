using FlowCalc.Flows;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings;

/// <summary>Finds the legs where starved nozzles part from the others, and the run in each that is to blame.</summary>
static class UnevenBranches
{
    // More legs than this are one fault seen many times, or a layout to start afresh; every starved nozzle is told by itself all the same.
    const int MostBranches = 3;

    public static List<UnevenBranch> Of(FlowCase flowCase, BranchCosts costs)
    {
        var limit = flowCase.Limit(FindingCodes.UnevenBranch);
        var branches = new List<UnevenBranch>();
        var isStarved = new bool[flowCase.Flow.Nozzles.Length];
        var left = 0;
        for (var nozzle = 0; nozzle < isStarved.Length; nozzle++)
        {
            flowCase.Pass(nozzle);
            isStarved[nozzle] = NozzleShares.Deviation(flowCase.Flow.Nozzles[nozzle]) is { } deviation && Grading.Of(limit, -deviation).Severity != Severity.Pass;
            if (isStarved[nozzle]) left++;
        }
        var missing = costs.MissingAtPoints();
        while (left > 0 && branches.Count < MostBranches)
        {
            flowCase.Cancellation.ThrowIfCancellationRequested();
            if (Next(flowCase, costs, isStarved, missing) is not { } branch) break;
            branches.Add(branch);
            left -= branch.Starved.Count;
        }
        return branches;
    }

    public static (Severity Severity, double Step) Grade(FlowCase flowCase, UnevenBranch branch) =>
        Grading.Of(flowCase.Limit(FindingCodes.UnevenBranch), -Deviation(flowCase, branch.Worst));

    public static string Sentence(FlowCase flowCase, UnevenBranch branch, double step)
    {
        var run = flowCase.Layout.Runs[branch.Leg];
        var dearest = flowCase.Flow.Runs[branch.Dearest].Losses;
        var ids = branch.Starved.ConvertAll(nozzle => flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point));
        var shortfall = -Deviation(flowCase, branch.Worst);
        var start = $"The leg of {Wording.Id(flowCase.PointId(run.From))} through {Wording.Id(run.Id)} leaves {Wording.Ids(ids)} short, by {Wording.Percent(shortfall, step)} at worst (limit {Wording.Percent(step)})";
        var closed = branch.Starved.FindAll(nozzle => NozzleShares.IsClosed(flowCase.Flow.Nozzles[nozzle]))
            .ConvertAll(nozzle => flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point));
        if (closed.Count > 0)
            return $"{start}: {Wording.Ids(closed)} {(closed.Count == 1 ? "gets nothing, as the rise to it takes" : "get nothing, as the rise to them takes")} all the pressure there is";
        var loss = Wording.Of(branch.Loss, QuantityKind.Pressure, flowCase.Units);
        var others = flowCase.Leaving(run.From).Length == 2 ? "the other leg" : "the other legs";
        if (branch.PeerLoss is { } peers && branch.Loss <= peers)
            return $"{start}, although it loses {loss} on the way to its nozzles and {others} {Wording.Of(peers, QuantityKind.Pressure, flowCase.Units)}: its nozzles are small for the shares wanted of them";

        var peer = branch.PeerLoss is { } known ? $", {others} {Wording.Of(known, QuantityKind.Pressure, flowCase.Units)}" : "";
        return $"{start}: on the way to its nozzles it loses {loss} on average{peer}; the dearest run in it is {Wording.Id(flowCase.RunId(branch.Dearest))} "
            + $"({Wording.Of(flowCase.Layout.Runs[branch.Dearest].Tube.Bore, flowCase.Units)} bore) with {Wording.Of(dearest.Total.Pascals, QuantityKind.Pressure, flowCase.Units)}, mostly {Cause(dearest)}";
    }

    public static double Deviation(FlowCase flowCase, int nozzle) => NozzleShares.Deviation(flowCase.Flow.Nozzles[nozzle]) ?? 0;

    static UnevenBranch? Next(FlowCase flowCase, BranchCosts costs, bool[] isStarved, double[] missing)
    {
        var runs = flowCase.Layout.Runs;
        var starvedAt = new double[missing.Length];
        for (var nozzle = 0; nozzle < isStarved.Length; nozzle++)
            if (isStarved[nozzle]) starvedAt[flowCase.Flow.Nozzles[nozzle].Point] = 1;
        var starved = costs.SumBehind(starvedAt);
        var behind = costs.SumBehind(missing);

        // No leg around one that was taken can win: it lost to that one before, so what it holds besides misses nothing on balance.
        var leg = -1;
        foreach (var run in costs.Outward)
        {
            if (flowCase.Leaving(runs[run].From).Length < 2 || starved[run] == 0) continue;
            // The first of equals is the one nearest to the supply: a leg beyond it parts from nothing but closed ends.
            if (leg < 0 || behind[run] > behind[leg] + 1e-12) leg = run;
        }
        return leg < 0 ? null : Take(flowCase, costs, leg, isStarved, missing);
    }

    static UnevenBranch Take(FlowCase flowCase, BranchCosts costs, int leg, bool[] isStarved, double[] missing)
    {
        var runs = flowCase.Layout.Runs;
        var (inLeg, inParting) = (new bool[missing.Length], new bool[missing.Length]);
        var parting = runs[leg].From;
        inParting[parting] = true;
        var dearest = leg;
        foreach (var run in costs.Outward)
        {
            flowCase.Pass(run);
            inParting[runs[run].To] |= inParting[runs[run].From];
            if (run != leg && !inLeg[runs[run].From]) continue;
            inLeg[runs[run].To] = true;
            missing[runs[run].To] = 0;
            if (costs.Of(run) > costs.Of(dearest)) dearest = run;
        }

        var starved = new List<int>();
        var (worst, loss, nozzles, peerLoss, peers) = (-1, 0.0, 0, 0.0, 0);
        for (var nozzle = 0; nozzle < isStarved.Length; nozzle++)
        {
            flowCase.Pass(nozzle);
            var flow = flowCase.Flow.Nozzles[nozzle];
            if (!inParting[flow.Point]) continue;
            var lost = flowCase.Flow.PointPressures[parting].Pascals - flow.Pressure.Pascals;
            if (!inLeg[flow.Point]) (peerLoss, peers) = (peerLoss + lost, peers + 1);
            else (loss, nozzles) = (loss + lost, nozzles + 1);
            if (!inLeg[flow.Point] || !isStarved[nozzle]) continue;
            isStarved[nozzle] = false;
            starved.Add(nozzle);
            if (worst < 0 || flow.Deviation < flowCase.Flow.Nozzles[worst].Deviation) worst = nozzle;
        }
        return new UnevenBranch(leg, starved, worst, dearest, loss / nozzles, peers > 0 ? peerLoss / peers : null);
    }

    static string Cause(LossBreakdown losses)
    {
        (string Words, Pressure Loss)[] kinds =
        [
            ("friction in straight tube", losses.Tube), ("bends", losses.Bends), ("the tee before it", losses.Tees),
            ("fittings", losses.Fittings), ("steps in bore", losses.BoreChanges), ("rise", losses.Rise),
        ];
        return kinds.MaxBy(kind => kind.Loss.Pascals).Words;
    }
}
