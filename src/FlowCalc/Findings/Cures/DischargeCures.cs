using FlowCalc.Findings.Discharges;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>Looks for cures of what fails in a discharge, by following the discharge of changed layouts.</summary>
static class DischargeCures
{
    const int MostOfOneCode = 4;

    // Rules that may not be the user's warn, and are acted on all the same.
    static readonly string[] Warned = [FindingCodes.DischargeTooSlow, FindingCodes.DischargeTooFast, FindingCodes.ColdUnderpowered, FindingCodes.BottleBlindWhenInverted];

    /// <summary>Gives each finding that a single change may mend its cure, or says what was tried.</summary>
    public static void Seek(JudgedDischarge judged, FindingList findings, TaskScheduler scheduler)
    {
        DischargeAttempts? attempts = null;
        Stages? ofShares = null;
        foreach (var at in Sought(findings))
        {
            var entry = findings.Entries[at];
            if (entry.Finding.Measured is null || !DischargeRemedies.Has(entry.Finding.Code)) continue;
            attempts ??= new DischargeAttempts(judged, scheduler);
            ofShares ??= new Stages(DischargeRemedies.OfShares(attempts));
            var remedies = CureFamilies.IsOfShares(entry.Finding.Code) ? ofShares : DischargeRemedies.Of(judged, entry, attempts);
            var (aim, measure) = (new Aim(entry, findings), new DischargeMeasure(entry, judged));
            // A case for itself, so that what was tried for one finding says little of another.
            var search = new CureSearch(aim, attempts.For(measure), measure.Badness(judged), new TriedPool());
            search.Run(remedies);
            var cure = search.Choose() is var (attempt, clears) ? Cure(aim, measure, attempt, clears, judged) : null;
            findings.Replace(at, entry.Finding with { Cure = cure, Message = cure is null ? CureWords.Without(entry.Finding.Message, search.Tried()) : entry.Finding.Message });
        }
    }

    static IEnumerable<int> Sought(FindingList findings) =>
        Enumerable.Range(0, findings.Entries.Count)
            .Where(at => findings.Entries[at].Finding is var finding && (finding.Severity == Severity.Fail || (finding.Severity == Severity.Warn && Array.IndexOf(Warned, finding.Code) >= 0)))
            .GroupBy(at => findings.Entries[at].Finding.Code).SelectMany(code => code.Take(MostOfOneCode))
            .OrderByDescending(at => findings.Entries[at].Finding.Severity).ThenBy(at => at);

    static Cure? Cure(Aim aim, DischargeMeasure measure, Attempt attempt, bool clears, JudgedDischarge judged)
    {
        var after = (JudgedDischarge)attempt.Judged;
        if (aim.Entry.Finding.Measured is not { Si: var from } before || measure.Of(after) is not { } to || !double.IsFinite(to)) return null;
        // The change may be the best for the layout as a whole; a nozzle that it moves further from its share has no cure in it.
        if (!clears && measure.IsDeviation && !(Imbalance.Badness(to) < Imbalance.Badness(from))) return null;
        var outcome = Outcome(attempt, after);
        return new Cure($"With {attempt.Change.Words}, {CureWords.Course(aim, attempt, measure.Subject, from, to, judged.Units)} at {judged.Name(judged.Discharge.Cases[measure.At])}"
            + $"{CureWords.Doubts(aim, attempt.Change, clears)}{CureWords.Left(outcome)}.",
            attempt.Change.Changes, before, new Quantities.Measure(to, measure.Kind), clears, outcome);
    }

    static CureOutcome Outcome(Attempt attempt, JudgedDischarge after)
    {
        (string? Nozzle, double? Deviation, double Badness) worst = (null, null, -1);
        (string? Case, Duration? Time, double Seconds) slowest = (null, null, -1);
        foreach (var (_, one) in after.Answered)
        {
            var time = after.Discharge.Requirement is null ? one.Time95 : one.RequiredTime;
            if ((time?.Seconds ?? double.PositiveInfinity) is var seconds && seconds > slowest.Seconds) slowest = (after.Name(one), time, seconds);
            if (DipTubes.GivesNothing(after, one)) continue;
            foreach (var nozzle in one.Nozzles)
            {
                if (!MassShares.GetsNothing(nozzle) && NozzleShares.Telling(nozzle.Deviation) is null) continue;
                var deviation = DischargeMeasure.Deviation(nozzle);
                if (Imbalance.Badness(deviation) is var badness && badness > worst.Badness) worst = (after.PointId(nozzle.Point), deviation, badness);
            }
        }
        return new(attempt.Found.Verdict, attempt.Found.Count(Severity.Fail), attempt.Found.Count(Severity.Warn), worst.Nozzle, worst.Deviation, slowest.Case, slowest.Time);
    }
}
