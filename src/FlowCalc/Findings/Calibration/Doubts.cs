using FlowCalc.Calibration;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Calibration;

/// <summary>Whether the likeliest cause is certain, explains the readings, and which reading it does not.</summary>
static class Doubts
{
    const int MostNamed = 6;

    public static void Find(JudgedCalibration judged, FindingList findings)
    {
        NotCertain(judged, findings);
        Disagreeing(judged, findings);
        Outliers(judged, findings);
    }

    static void NotCertain(JudgedCalibration judged, FindingList findings)
    {
        var limit = judged.Limit(CalibrationCodes.CauseNotCertain);
        var best = judged.Best;
        var others = judged.Result.Causes.Where(cause => (cause.Kind, cause.Run) != (best.Kind, best.Run) && Grading.Of(limit, cause.Score - best.Score, lowerIsWorse: true).Severity > Severity.Pass).ToArray();
        if (others.Length == 0) return;
        var behind = others[0].Score - best.Score;
        var (severity, step) = Grading.Of(limit, behind, lowerIsWorse: true);
        // Where the drawn layout stands although another explains better, only those that do are named as better.
        if (behind < 0) others = [.. others.Where(cause => cause.Score < best.Score)];
        var named = string.Join(", ", others.Take(MostNamed).Select(judged.Words)) + (others.Length > MostNamed ? $" and {Wording.Count(others.Length - MostNamed, "other")}" : "");
        var message = behind < 0
            ? $"The layout as drawn stands, but {named} would explain the readings better, by a score of up to {Wording.Number(-behind)}, where strong evidence begins at {Wording.Number(CauseScore.Strong)}; more or better readings would tell."
            : $"The readings do not tell {judged.Words(best)} from {named}: the score of the next is {Wording.Number(behind)} more, limit {Wording.Number(step)}. Readings of other nozzles, or pressures between them, would tell.";
        findings.Add(new Finding(CalibrationCodes.CauseNotCertain, severity, [.. others.Take(FindingList.MostIds).SelectMany(cause => judged.Where(cause))], message, new Measure(behind, null), new Measure(step, null), limit.Source, null), -1);
    }

    static void Disagreeing(JudgedCalibration judged, FindingList findings)
    {
        if (judged.Best.Chance is not { } chance) return;
        var limit = judged.Limit(CalibrationCodes.ReadingsDisagree);
        var (severity, step) = Grading.Of(limit, chance, lowerIsWorse: true);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(CalibrationCodes.ReadingsDisagree, severity, [],
            $"Even with {judged.Words(judged.Best)} the readings are further off than their uncertainties allow: they would be in {Wording.Number(chance * 100)} % of tests, limit {Wording.Number(step * 100)} %. More than one thing is otherwise than drawn, or readings are worse than stated.",
            new Measure(chance, null), new Measure(step, null), limit.Source, null), -1);
    }

    static void Outliers(JudgedCalibration judged, FindingList findings)
    {
        var limit = judged.Limit(CalibrationCodes.ReadingOutlier);
        List<Hit>? hits = null;
        var readings = judged.Measured.Readings;
        for (var at = 0; at < readings.Length; at++)
        {
            var off = Math.Abs(readings[at].Value - judged.Best.Predicted[at]) / readings[at].Sigma;
            var (severity, step) = Grading.Of(limit, off);
            if (severity > Severity.Pass) (hits ??= []).Add(new Hit(at, judged.Place(readings[at]), severity, off, off, step));
        }
        findings.Add(CalibrationCodes.ReadingOutlier, limit.Source, null, "reading", hits, hit =>
        {
            var reading = readings[hit.Item];
            return $"{Wording.Id(hit.Id)} read {judged.Text(reading.Kind, reading.Value)} where {judged.Words(judged.Best)} gives {judged.Text(reading.Kind, judged.Best.Predicted[hit.Item])}: {Wording.Number(hit.Measured)} standard uncertainties off, limit {Wording.Number(hit.Bound)}; read it again";
        });
    }
}
