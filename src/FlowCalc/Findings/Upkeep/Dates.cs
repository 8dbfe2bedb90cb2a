using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Upkeep;

namespace FlowCalc.Findings.Upkeep;

/// <summary>Dates that have passed, that are near, or that cannot be told.</summary>
static class Dates
{
    public static void Find(JudgedUpkeep judged, FindingList findings)
    {
        var soon = judged.Limit(FindingCodes.DueSoon);
        List<Hit>? missing = null;
        for (var at = 0; at < judged.Result.Dates.Length; at++)
        {
            var date = judged.Result.Dates[at];
            var name = date.Rule.Name;
            if (date.DaysLeft is not { } left) (missing ??= []).Add(new Hit(at, name, Severity.Warn, 0, 0, 0));
            else if (left < 0) AddOverdue(judged, findings, date, at, -left);
            else if (Grading.Of(soon, left, lowerIsWorse: true) is { Severity: > Severity.Pass } near)
                findings.Add(new Finding(FindingCodes.DueSoon, near.Severity, [name],
                    $"{Wording.Id(name)} is due on {JudgedUpkeep.Day(date.Due!.Value)}, {(left == 0 ? "the day that is asked for" : $"{Wording.Count(left, "day")} after the day that is asked for")}.",
                    new Measure(left, null), new Measure(near.Step, null), soon.Source, null), at);
        }
        findings.Add(FindingCodes.LabelMissing, DefaultLimits.CommonPractice, null, "rule", missing, hit => $"The document gives no date that {Wording.Id(hit.Id)} could count from, not even when the bottle was made");
    }

    static void AddOverdue(JudgedUpkeep judged, FindingList findings, DueDate date, int at, int late)
    {
        var code = date.Rule.Name switch { UsualRule.Service => FindingCodes.ServiceOverdue, UsualRule.PressureTest => FindingCodes.PressureTestOverdue, _ => FindingCodes.DateOverdue };
        // A usual interval may not be the user's rule.
        var severity = date.IsStated ? Severity.Fail : Severity.Warn;
        findings.Add(new Finding(code, severity, [date.Rule.Name],
            $"{Wording.Id(date.Rule.Name)} was due on {JudgedUpkeep.Day(date.Due!.Value)}, {Wording.Count(date.Rule.Months, "month")} after {date.Counted}: {Wording.Count(late, "day")} before the day that is asked for, {JudgedUpkeep.Day(judged.Result.Today)}.",
            new Measure(late, null), new Measure(0, null), date.Source, null), at);
    }
}
