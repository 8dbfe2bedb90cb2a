using FlowCalc.Findings;

namespace FlowCalc.Workbench.Figures;

/// <summary>How much a finding matters, and the change that cures it, in words and signs that need no colour.</summary>
public static class Severities
{
    /// <summary>A word.</summary>
    public static string Word(Severity severity) => severity switch
    {
        Severity.Fail => "Fails",
        Severity.Warn => "Warns",
        Severity.Note => "Note",
        _ => "Passes",
    };

    /// <summary>A sign beside the word.</summary>
    public static string Mark(Severity severity) => severity switch
    {
        Severity.Fail => "\u2715",
        Severity.Warn => "!",
        Severity.Note => "i",
        _ => "\u2713",
    };

    /// <summary>What a cure changes, as a request.</summary>
    public static string Change(Cure cure)
    {
        ArgumentNullException.ThrowIfNull(cure);
        return string.Join(", ", cure.Changes.Select(change => change.To is { } to ? $"Set {change.Path.Replace('/', ' ')} to {to.Words}" : $"Take {change.Path.Replace('/', ' ')} away"));
    }
}
