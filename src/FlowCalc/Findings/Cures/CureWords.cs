using System.Globalization;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>Parts of the sentences of cures.</summary>
static class CureWords
{
    /// <summary>What is left of findings with a change; to end a sentence.</summary>
    public static string Left(CureOutcome outcome) => (outcome.Fails, outcome.Warns) switch
    {
        (0, 0) => "; nothing fails or warns then",
        (0, var warns) => $"; nothing fails then, {Wording.Count(warns, "warning")} {(warns == 1 ? "is" : "are")} left",
        (var fails, 0) => $"; {Wording.Count(fails, "failure")} {(fails == 1 ? "is" : "are")} left",
        var (fails, warns) => $"; {Wording.Count(fails, "failure")} and {Wording.Count(warns, "warning")} are left",
    };

    /// <summary>How the measure moves, to follow "With a change,".</summary>
    /// <param name="aim">The finding.</param>
    /// <param name="attempt">The change.</param>
    /// <param name="subject">What is measured.</param>
    /// <param name="from">The measure before, SI.</param>
    /// <param name="to">The measure after, SI.</param>
    /// <param name="units">The system of units.</param>
    public static string Course(Aim aim, Attempt attempt, string subject, double from, double to, UnitSystem units)
    {
        var (kind, run) = (aim.Entry.Finding.Measured?.Kind, aim.Entry.Worst);
        string Text(double value) => kind is { } known ? Wording.Of(value, known, units)
            : aim.Code is FindingCodes.PressureSpread or FindingCodes.BendsInteract ? Wording.Number(value) : CureFamilies.IsOfShares(aim.Code) ? Wording.Signed(value) : Wording.Percent(value);
        // Another tube bears more of what stands there all the same.
        if (aim.Code == FindingCodes.OverWorkingPressure && run >= 0 && from == to && attempt.Judged.Layout.Runs[run].Tube.WorkingPressure is { } mark)
            return $"the tube is marked for {Wording.Gauge(mark.Pascals, attempt.Judged)}, where {Text(to)} stand";
        return $"{subject} goes from {Text(from)} to {Text(to)}{(aim.Code == FindingCodes.NozzleBelowRange && aim.IsClearedBy(attempt.Found) ? ", within its range" : "")}";
    }

    /// <summary>Whether a change clears what it was tried for, and whether it can be built.</summary>
    public static string Doubts(Aim aim, LayoutChange change, bool clears)
    {
        var still = clears ? "" : aim.Severity == Severity.Fail ? ", which still fails" : ", which still warns";
        return change.Doubt is { } why ? $"{still}; but {why}" : still;
    }

    /// <summary>What was tried, put before the full stop of a message that has no cure.</summary>
    public static string Without(string message, string tried) => string.Create(CultureInfo.InvariantCulture, $"{message.AsSpan().TrimEnd('.')}; no cure found, {tried}.");
}
