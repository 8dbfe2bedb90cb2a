using FlowCalc.Findings;
using FlowCalc.Workbench.Pictures;

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

    /// <summary>What is found, in a word.</summary>
    public static string Noun(Severity severity) => severity switch
    {
        Severity.Fail => "Failure",
        Severity.Warn => "Warning",
        Severity.Note => "Note",
        _ => "Pass",
    };

    /// <summary>A verdict as a heading; none of its words says that anything is approved.</summary>
    public static string Heading(Severity verdict) => verdict switch
    {
        Severity.Fail => "Fails",
        Severity.Warn => "Warnings",
        Severity.Note => "Notes",
        _ => "Nothing found",
    };

    /// <summary>A colour.</summary>
    public static Ink Ink(Severity severity) => severity switch
    {
        Severity.Fail => Pictures.Ink.Fail,
        Severity.Warn => Pictures.Ink.Warn,
        Severity.Note => Pictures.Ink.Note,
        _ => Pictures.Ink.Pass,
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
