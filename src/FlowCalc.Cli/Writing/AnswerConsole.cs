using System.Text;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Startup;
using Spectre.Console;

namespace FlowCalc.Cli.Writing;

/// <summary>Writes answers and faults where a command's terminal has them.</summary>
static class AnswerConsole
{
    static readonly UTF8Encoding Plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes an answer.</summary>
    public static async Task WriteAsync(Terminal terminal, Outcome outcome, bool isJson, CancellationToken cancel)
    {
        if (isJson)
        {
            using var text = new JsonText();
            outcome.Json(text);
            await terminal.Output.WriteAsync(text.Bytes, cancel);
            await terminal.Output.WriteAsync("\n"u8.ToArray(), cancel);
            return;
        }
        await using var writer = new StreamWriter(terminal.Output, Plain, leaveOpen: true);
        var console = terminal.IsPlain ? DemoConsole.Plain(writer) : DemoConsole.OfProcess();
        BlockConsole.Write(console, outcome.Blocks);
        DemoWords.WriteFindings(console, outcome.Findings);
        console.Write(new Paragraph("Verdict: ").Append(DemoWords.Word(outcome.Verdict), DemoWords.Colour(outcome.Verdict)));
        console.WriteLine();
        console.WriteLine();
        foreach (var caution in outcome.Cautions)
        {
            console.Write(new Text(caution));
            console.WriteLine();
        }
    }

    /// <summary>Writes why there is no answer: as the service says it, in JSON, or a line a fault.</summary>
    public static async Task WriteAsync(Terminal terminal, Problem problem, bool isJson)
    {
        if (isJson)
        {
            using var text = new JsonText();
            text.Value(problem, AnswerJson.Default.Problem);
            await terminal.Error.WriteLineAsync(Encoding.UTF8.GetString(text.Bytes.Span));
            return;
        }
        await terminal.Error.WriteLineAsync(problem.Detail);
        foreach (var (place, messages) in problem.Errors ?? new Dictionary<string, string[]>())
            foreach (var message in messages)
                await terminal.Error.WriteLineAsync(place.Length == 0 ? message : $"{place}: {message}");
    }
}
