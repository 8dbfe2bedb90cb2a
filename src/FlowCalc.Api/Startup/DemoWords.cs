using System.Globalization;
using FlowCalc.Findings;
using Spectre.Console;

namespace FlowCalc.Api.Startup;

/// <summary>Words, colours and findings as the demo's tables print them.</summary>
internal static class DemoWords
{
    const int Indent = 5;

    public static readonly Style Bold = Style.Parse("bold");

    /// <summary>A finding with its sentence, indented; whoever prints a cure goes on below it.</summary>
    public static void WriteFinding(IAnsiConsole console, Finding finding)
    {
        console.Write(new Paragraph(Word(finding.Severity).PadRight(Indent), Colour(finding.Severity)).Append($"{finding.Code} ({string.Join(", ", finding.Where)})", Bold));
        console.WriteLine();
        WriteIndented(console, finding.Message);
    }

    /// <summary>A paragraph below a finding.</summary>
    public static void WriteIndented(IAnsiConsole console, string text, Style? style = null) =>
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

    /// <summary>A part with its sign, in per cent.</summary>
    public static string Signed(double part) => (100 * part).ToString("+0.0;−0.0;0.0", CultureInfo.InvariantCulture) + " %";
}
