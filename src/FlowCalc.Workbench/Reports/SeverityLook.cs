using FlowCalc.Findings;

namespace FlowCalc.Workbench.Reports;

/// <summary>A verdict in a word and a colour.</summary>
static class SeverityLook
{
    /// <summary>Its colour.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is no member of its enumeration.</exception>
    public static Pictures.Ink Ink(Severity severity) => severity switch
    {
        Severity.Pass => Pictures.Ink.Pass,
        Severity.Note => Pictures.Ink.Note,
        Severity.Warn => Pictures.Ink.Warn,
        Severity.Fail => Pictures.Ink.Fail,
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Not a severity."),
    };

    /// <summary>Its word; none of them says that anything is approved.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="severity"/> is no member of its enumeration.</exception>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Pass => "Nothing found",
        Severity.Note => "Notes",
        Severity.Warn => "Warnings",
        Severity.Fail => "Fails",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Not a severity."),
    };
}
