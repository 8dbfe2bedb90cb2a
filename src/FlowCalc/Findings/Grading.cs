using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>Holds a value against the steps of a limit.</summary>
static class Grading
{
    // A value that stands on a step is still within it, and arithmetic may have moved it by a few last digits.
    const double Slack = 1e-9;

    /// <summary>The severity of a value, and the step that it is beyond; a step marked refuse counts as a failure here.</summary>
    public static (Severity Severity, double Step) Of(Limit limit, double value, bool lowerIsWorse = false)
    {
        if (limit.Refuse is { } refuse && IsBeyond(value, refuse.Si, lowerIsWorse)) return (Severity.Fail, limit.Fail?.Si ?? refuse.Si);
        if (limit.Fail is { } fail && IsBeyond(value, fail.Si, lowerIsWorse)) return (Severity.Fail, fail.Si);
        if (limit.Warn is { } warn && IsBeyond(value, warn.Si, lowerIsWorse)) return (Severity.Warn, warn.Si);
        if (limit.Note is { } note && IsBeyond(value, note.Si, lowerIsWorse)) return (Severity.Note, note.Si);
        return (Severity.Pass, 0);
    }

    public static bool IsBeyond(double value, double step, bool lowerIsWorse = false)
    {
        var slack = Slack * Math.Max(1, Math.Abs(step));
        return lowerIsWorse ? value < step - slack : value > step + slack;
    }
}
