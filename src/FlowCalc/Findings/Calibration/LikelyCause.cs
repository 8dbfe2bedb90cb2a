using FlowCalc.Calibration;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Calibration;

/// <summary>What the likeliest cause is, where it is not the layout as drawn.</summary>
static class LikelyCause
{
    const string Best = "The readings are best explained by ";

    public static void Find(JudgedCalibration judged, FindingList findings)
    {
        if (judged.Best.Kind == CauseKind.Run) OneRun(judged, findings);
        else if (judged.Best.Kind != CauseKind.AsDrawn) Throughout(judged, findings);
    }

    static void OneRun(JudgedCalibration judged, FindingList findings)
    {
        var cause = judged.Best;
        var run = judged.Layout.Runs[cause.Run];
        var lost = cause.FlowLost!.Value;
        var (unknown, id) = (cause.Unknowns[0], Wording.Id(run.Id));
        if (judged.Limit(CalibrationCodes.LikelyBlockedRun) is var blocked && Grading.Of(blocked, lost) is { Severity: > Severity.Pass } shut)
        {
            findings.Add(new Finding(CalibrationCodes.LikelyBlockedRun, shut.Severity, judged.Where(cause),
                $"{Best}{id} letting hardly anything through: in the test it loses {Wording.Percent(lost, shut.Step)} of its flow, limit {Wording.Percent(shut.Step)}. Look there for a plug, a cap, swarf or a fold before anything else is judged.",
                new Measure(lost, null), new Measure(shut.Step, null), blocked.Source, null), cause.Run);
            return;
        }
        var limit = judged.Limit(CalibrationCodes.LikelyKinkedRun);
        var (severity, step) = Grading.Of(limit, lost);
        if (severity == Severity.Pass) return;
        var open = PinchedBore.Of(run.Tube.Bore.Meters, unknown.Value);
        findings.Add(new Finding(CalibrationCodes.LikelyKinkedRun, severity, judged.Where(cause),
            $"{Best}a loss in {id} that is not drawn, K {judged.Text(unknown)} on its velocity head, as much as a sharp-edged place of {judged.Text(open, QuantityKind.Length)} in its bore of {judged.Text(run.Tube.Bore.Meters, QuantityKind.Length)}: in the test it loses {Wording.Percent(lost, step)} of its flow, limit {Wording.Percent(step)}. Look there for a kink, a flattened bend, a pinched fitting or swarf.",
            new Measure(lost, null), new Measure(step, null), limit.Source, null), cause.Run);
    }

    static void Throughout(JudgedCalibration judged, FindingList findings)
    {
        var cause = judged.Best;
        var limit = judged.Limit(CalibrationCodes.BuiltOtherwise);
        var moved = Moved(judged);
        var (severity, step) = Grading.Of(limit, moved);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(CalibrationCodes.BuiltOtherwise, severity, judged.Where(cause),
            $"{Best}{Said(judged, cause)}: that moves a reading by up to {Wording.Percent(moved, step)}, limit {Wording.Percent(step)}.",
            new Measure(moved, null), new Measure(step, null), limit.Source, null), -1);
    }

    static string Said(JudgedCalibration judged, CauseFit cause) => cause.Kind switch
    {
        CauseKind.SupplyPressure => $"a pressure of the test's supply that is {judged.Text(cause.Unknowns[0])} times what was read, the layout being as drawn; check the gauge",
        CauseKind.Roughness => $"a roughness of {judged.Text(cause.Unknowns[0])} in all tube",
        CauseKind.Bore => $"bores that are {judged.Text(cause.Unknowns[0])} times those drawn, by the tube's wall or by its being oval",
        _ => $"K-factors that are not those stated: {string.Join(", ", cause.Unknowns.Select(unknown => $"of {judged.Name(unknown.Nozzles!)} {judged.Text(unknown)} times as large"))}",
    };

    static double Moved(JudgedCalibration judged)
    {
        var (worst, ambient) = (0.0, judged.Ambient);
        for (var at = 0; at < judged.Measured.Readings.Length; at++)
        {
            var from = judged.Measured.Readings[at].Kind == MeasuredKind.Pressure ? ambient : 0;
            var drawn = judged.Result.Drawn!.Predicted[at] - from;
            if (drawn > 0) worst = Math.Max(worst, Math.Abs((judged.Best.Predicted[at] - from) / drawn - 1));
        }
        return worst;
    }
}
