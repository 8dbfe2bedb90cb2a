using FlowCalc.Findings;

namespace FlowCalc.Api.Answers;

/// <summary>The word for a severity in answers.</summary>
internal static class SeverityWord
{
    public static string Of(Severity severity) => severity switch
    {
        Severity.Pass => "pass",
        Severity.Note => "note",
        Severity.Warn => "warn",
        Severity.Fail => "fail",
        _ => throw new ArgumentOutOfRangeException(nameof(severity), severity, "Not a severity."),
    };
}
