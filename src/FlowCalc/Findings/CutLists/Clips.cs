using FlowCalc.Routes;

namespace FlowCalc.Findings.CutLists;

/// <summary>Clips as the document states them: too far apart, or too far from a fitting.</summary>
static class Clips
{
    public static void Find(JudgedCutList judged, FindingList findings)
    {
        var (far, near) = (judged.Limit(FindingCodes.ClipTooFar), judged.Limit(FindingCodes.FittingUnsupported));
        List<Hit>? apart = null, unsupported = null;
        foreach (var (index, run, cut) in judged.Runs)
        {
            if (!(run.Length.Meters > 0)) continue;
            var (gap, allowed) = Widest(cut.Clips);
            var (severity, step) = Grading.Of(far, gap / allowed);
            if (severity != Severity.Pass) (apart ??= []).Add(new Hit(index, run.Id, severity, gap / allowed, gap, step * allowed));

            if (!cut.Clips.AreStated) continue;
            var (noted, bound) = Grading.Of(near, cut.Clips.FarthestJoint.Meters);
            if (noted != Severity.Pass) (unsupported ??= []).Add(new Hit(index, run.Id, noted, cut.Clips.FarthestJoint.Meters, cut.Clips.FarthestJoint.Meters, bound));
        }
        judged.Add(findings, FindingCodes.ClipTooFar, apart, hit =>
            $"{(judged.CutList.Runs[hit.Item].Clips.AreStated ? $"{Wording.Id(hit.Id)} goes {judged.Text(hit.Measured, hit.Bound)} without a clip" : $"The clips stated for {Wording.Id(hit.Id)} are {judged.Text(hit.Measured, hit.Bound)} apart")}, "
            + $"limit {judged.Text(hit.Bound)} for its size and material there");
        judged.Add(findings, FindingCodes.FittingUnsupported, unsupported, hit =>
            $"A fitting of {Wording.Id(hit.Id)} has its next clip {judged.Text(hit.Measured, hit.Bound)} away, limit {judged.Text(hit.Bound)}");
    }

    static (double Gap, double Allowed) Widest(RunClips clips) =>
        clips.AreStated ? (clips.WidestGap.Meters, clips.GapLimit.Meters) : (clips.Spacing.Meters, clips.Table.Meters);
}
