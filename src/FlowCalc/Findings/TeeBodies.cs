using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Tees whose make is not given, and how far the answer moves should they be threaded.</summary>
static class TeeBodies
{
    public static void Find(FlowCase flowCase, FindingList findings)
    {
        List<int>? open = null;
        var points = flowCase.Layout.Points;
        for (var point = 0; point < points.Length; point++)
        {
            flowCase.Pass(point);
            if (points[point] is Tee { Body: null }) (open ??= []).Add(point);
        }
        if (open is null) return;

        var threaded = points.ToBuilder();
        foreach (var point in open) threaded[point] = (Tee)points[point] with { Body = TeeBody.Threaded };
        var then = SteadyFlow.Solve(flowCase.Layout with { Points = threaded.ToImmutable() }, flowCase.Cancellation);

        var ids = open.ConvertAll(flowCase.PointId);
        var (move, sentence) = Move(flowCase, then);
        findings.Add(new Finding(FindingCodes.TeeBodyAssumed, Severity.Note, [.. ids.Take(FindingList.MostIds)],
            $"How {Wording.Ids(ids)} {(ids.Count == 1 ? "is" : "are")} made is not given and smooth inside was taken; threaded, {sentence}.",
            move is { } size ? new Measure(size, null) : null, null, "the document leaves it open", null), open[0]);
    }

    // The largest move of a nozzle's own flow is what a reader has to reckon with.
    static (double? Move, string Sentence) Move(FlowCase flowCase, FlowResult then)
    {
        if (!then.Report.Converged || flowCase.Flow.Supply is not { } supply || then.Supply is not { } other) return (null, "no flow is found");
        if (!(supply.MassFlow.KilogramsPerSecond > 0)) return (null, "there would be no flow either");
        var whole = other.MassFlow / supply.MassFlow - 1;
        var (move, most) = (0.0, -1);
        for (var nozzle = 0; nozzle < then.Nozzles.Length; nozzle++)
        {
            var before = flowCase.Flow.Nozzles[nozzle];
            if (NozzleShares.IsClosed(before)) continue;
            var change = then.Nozzles[nozzle].MassFlow / before.MassFlow - 1;
            if (!double.IsFinite(change)) continue;
            if (most < 0 || Math.Abs(change) > Math.Abs(move)) (move, most) = (change, nozzle);
        }
        var flow = $"the whole flow would change by {Wording.Signed(whole)}";
        return most < 0 ? (null, flow) : (move, $"{flow} and that of {Wording.Id(flowCase.PointId(then.Nozzles[most].Point))}, which moves most, by {Wording.Signed(move)}");
    }
}
