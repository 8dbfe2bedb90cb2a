using FlowCalc.Findings;
using Spectre.Console;

namespace FlowCalc.Api.Startup;

/// <summary>Words, colours and findings as the demo's tables print them.</summary>
internal static class DemoWords
{
    const int Indent = 5;

    public static readonly Style Bold = Style.Parse("bold");

    /// <summary>Findings, each with its sentence and its cure. One change often mends several; it is told in full only once.</summary>
    public static void WriteFindings(IAnsiConsole console, IEnumerable<Finding> findings)
    {
        var told = new HashSet<string>();
        foreach (var finding in findings)
        {
            WriteFinding(console, finding);
            if (finding.Cure is { } cure) WriteIndented(console, Words(cure, told), Style.Parse("green"));
        }
    }

    static void WriteFinding(IAnsiConsole console, Finding finding)
    {
        console.Write(new Paragraph(Word(finding.Severity).PadRight(Indent), Colour(finding.Severity)).Append($"{finding.Code} ({string.Join(", ", finding.Where)})", Bold));
        console.WriteLine();
        WriteIndented(console, finding.Message);
    }

    static string Words(Cure cure, HashSet<string> told)
    {
        var changes = string.Join(", ", cure.Changes.Select(change => $"{change.Path} from {Said(change.From)} to {Said(change.To)}"));
        return told.Add(changes) ? $"Cure: {cure.Message}" : $"Cure: the same, {changes}.";
    }

    static string Said(ChangeValue? value) => value?.Words ?? "nothing";

    static void WriteIndented(IAnsiConsole console, string text, Style? style = null) =>
        console.Write(new Padder(new Text(text, style), new Padding(Indent, 0, 0, 0)));

    public static string Word(Severity severity) => severity switch
    {
        Severity.Pass => "ok",
        Severity.Note => "note",
        Severity.Warn => "warn",
        _ => "FAIL",
    };

    public static Style Colour(Severity severity) => Style.Parse(severity switch
    {
        Severity.Pass => "green",
        Severity.Note => "blue",
        Severity.Warn => "yellow",
        _ => "red",
    });
}
