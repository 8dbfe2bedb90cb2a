using FlowCalc.Layouts;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>Tees that divide their flow more unevenly than loss data reach.</summary>
static class TeeSplits
{
    // Where the printed tables known to us end or thin out: common practice, no source.
    const double RunFedLeast = 0.10;
    const double BullheadLeast = 0.30;

    public static List<Hit>? OutsideData(FlowCase flowCase)
    {
        List<Hit>? hits = null;
        var points = flowCase.Layout.Points;
        for (var point = 0; point < points.Length; point++)
        {
            flowCase.Pass(point);
            if (points[point] is not Tee tee) continue;
            var legs = flowCase.Leaving(point);
            if (legs.Length != 2) continue;
            var first = flowCase.Flow.Runs[legs[0]].MassFlow.KilogramsPerSecond;
            var whole = first + flowCase.Flow.Runs[legs[1]].MassFlow.KilogramsPerSecond;
            if (!(whole > 0)) continue;

            // The branch's part of a run-fed tee; of a tee fed through its branch the smaller outlet's.
            var part = first / whole;
            var smaller = Math.Min(part, 1 - part);
            var runFed = tee.FedThrough == TeePort.Run;
            var least = runFed ? RunFedLeast : BullheadLeast;
            if (!Grading.IsBeyond(smaller, least, lowerIsWorse: true)) continue;
            if (runFed && flowCase.Layout.Runs[legs[0]].Leaves != TeePort.Branch) part = 1 - part;
            var shown = runFed ? part : smaller;
            (hits ??= []).Add(new Hit(point, tee.Id, Severity.Warn, least - smaller, shown, shown > 0.5 ? 1 - least : least));
        }
        return hits;
    }

    public static void Find(FlowCase flowCase, FindingList findings) =>
        findings.Add(FindingCodes.TeeOutsideData, DefaultLimits.CommonPractice, null, "tee", OutsideData(flowCase), hit =>
        {
            var runFed = flowCase.Layout.Points[hit.Item] is Tee { FedThrough: TeePort.Run };
            return runFed
                ? $"The branch of {Wording.Id(hit.Id)} takes {Wording.Percent(hit.Measured, hit.Bound)} of its flow; loss data for tees fed through the run are commonly trusted from 10 to 90 %"
                : $"The smaller outlet of {Wording.Id(hit.Id)} takes {Wording.Percent(hit.Measured, hit.Bound)} of its flow; loss data for tees fed through the branch are commonly trusted from 30 to 70 %";
        });
}
