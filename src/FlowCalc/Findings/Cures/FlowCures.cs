using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>Looks for cures of what was found in a steady flow, by solving changed layouts.</summary>
static class FlowCures
{
    // A cure for each of many runs would take more solves than one request is worth.
    const int MostOfOneCode = 5;

    // Shares have several findings and one fault.
    const int MostOfShares = 20;

    // Warnings of which a change is told beside failures of any kind.
    static readonly string[] Warned = [FindingCodes.StarvedNozzle, FindingCodes.OverfedNozzle, FindingCodes.StarvedZone, FindingCodes.UnevenBranch, FindingCodes.VelocityHigh, FindingCodes.NozzleBelowRange, FindingCodes.BendTooTight];

    /// <summary>Gives each finding that a single change may mend its cure, or says what was tried.</summary>
    public static void Seek(FlowCase flowCase, FindingList findings) => Seek(flowCase, findings, new Trials(Trials.SizeOf(flowCase.Layout), flowCase.Cancellation));

    /// <summary>As above, with a given number of trials.</summary>
    public static void Seek(FlowCase flowCase, FindingList findings, Trials trials)
    {
        var attempts = new FlowAttempts(flowCase, trials);
        var ofShares = new Stages(FlowRemedies.OfShares(flowCase));
        var pool = new TriedPool();
        List<(int At, Aim Aim, FlowMeasure Measure, CureSearch Search)> searches = [];
        // What fails comes first, and what belongs to one fault shares its trials.
        foreach (var at in Sought(findings))
        {
            var entry = findings.Entries[at];
            var (aim, measure, isOfShares) = (new Aim(entry, findings), new FlowMeasure(entry, flowCase), CureFamilies.IsOfShares(entry.Finding.Code));
            var search = new CureSearch(aim, attempts.For(measure), measure.Badness(flowCase), isOfShares ? pool : new TriedPool());
            search.Run(isOfShares ? ofShares : FlowRemedies.Of(flowCase, entry));
            searches.Add((at, aim, measure, search));
        }
        foreach (var (at, aim, measure, search) in searches)
        {
            var finding = aim.Entry.Finding;
            var cure = search.Choose() is var (attempt, clears) ? Cure(aim, measure, attempt, clears, flowCase) : null;
            if (cure is not null) findings.Replace(at, finding with { Cure = cure });
            else if (aim.Severity == Severity.Fail || CureFamilies.IsOfShares(aim.Code)) findings.Replace(at, finding with { Message = CureWords.Without(finding.Message, search.Tried()) });
        }
    }

    static List<int> Sought(FindingList findings)
    {
        Dictionary<string, int> count = [];
        List<int> sought = [];
        // Of nozzles below their range the lowest stands for all.
        var lowest = findings.Entries.Where(entry => entry.Finding.Code == FindingCodes.NozzleBelowRange)
            .OrderByDescending(entry => entry.Finding.Limit!.Value.Si - entry.Finding.Measured!.Value.Si).Select(entry => entry.Item).FirstOrDefault(-1);
        foreach (var at in Enumerable.Range(0, findings.Entries.Count).OrderByDescending(at => findings.Entries[at].Finding.Severity).ThenByDescending(at => CureFamilies.IsOfShares(findings.Entries[at].Finding.Code)))
        {
            var (finding, code) = (findings.Entries[at].Finding, findings.Entries[at].Finding.Code);
            if (finding.Severity < Severity.Warn || (finding.Severity == Severity.Warn && Array.IndexOf(Warned, code) < 0)) continue;
            if (code == FindingCodes.NozzleBelowRange && findings.Entries[at].Item != lowest) continue;
            var most = CureFamilies.IsOfShares(code) ? MostOfShares : MostOfOneCode;
            if (count.GetValueOrDefault(code) >= most || !FlowRemedies.Has(code)) continue;
            count[code] = count.GetValueOrDefault(code) + 1;
            sought.Add(at);
        }
        return sought;
    }

    static Cure? Cure(Aim aim, FlowMeasure measure, Attempt attempt, bool clears, FlowCase flowCase)
    {
        var after = (FlowCase)attempt.Judged;
        if (aim.Entry.Finding.Measured is not { Si: var from } before || measure.Of(after) is not { } to || !double.IsFinite(to)) return null;
        // The change may be the best for the layout as a whole; a nozzle that it moves further from its share has no cure in it.
        if (!clears && measure.IsDeviation && !(Imbalance.Badness(to) < Imbalance.Badness(from))) return null;
        var outcome = Outcome(attempt);
        var worst = measure.IsDeviation ? Worst(flowCase, after) : "";
        return new Cure($"With {attempt.Change.Words}, {CureWords.Course(aim, attempt, measure.Subject, from, to, flowCase.Units)}{worst}{CureWords.Doubts(aim, attempt.Change, clears)}{CureWords.Left(outcome)}.",
            attempt.Change.Changes, before, new Measure(to, measure.Kind), clears, outcome);
    }

    static string Worst(FlowCase before, FlowCase after)
    {
        var (was, now) = (Imbalance.Worst(before.Flow).Nozzle, Imbalance.Worst(after.Flow).Nozzle);
        return was < 0 || now < 0 ? "" : $", and the worst nozzle is then {Named(after, now)} instead of {Named(before, was)}";
    }

    static string Named(FlowCase flowCase, int nozzle) =>
        $"{Wording.Id(flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point))} at {Wording.Signed(NozzleShares.Deviation(flowCase.Flow.Nozzles[nozzle]) ?? -1)}";

    static CureOutcome Outcome(Attempt attempt)
    {
        var after = (FlowCase)attempt.Judged;
        var worst = Imbalance.Worst(after.Flow).Nozzle;
        return new(attempt.Found.Verdict, attempt.Found.Count(Severity.Fail), attempt.Found.Count(Severity.Warn),
            worst < 0 ? null : after.PointId(after.Flow.Nozzles[worst].Point), worst < 0 ? null : NozzleShares.Deviation(after.Flow.Nozzles[worst]));
    }
}
