using System.CommandLine;
using FlowCalc.Cli.Jobs;
using FlowCalc.Cli.Writing;

namespace FlowCalc.Cli;

/// <summary>Commands that answer with a table to read, or in JSON.</summary>
static class AnswerCommand
{
    /// <summary>A command.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it does.</param>
    /// <param name="job">Its job, by what the line asks.</param>
    /// <param name="terminal">Where it reads and writes.</param>
    public static Command Of(string name, string description, Func<ParseResult, IJob> job, Terminal terminal)
    {
        var command = new Command(name, description);
        var options = new CommandOptions();
        options.AddTo(command);
        command.SetAction(async (line, cancel) =>
        {
            var document = await options.ReadAsync(line, terminal, cancel);
            using var progress = new ProgressLine(terminal);
            var asked = options.Asked(line, progress.IfWatched);
            if (job(line).Do(document, asked, out var fault, cancel) is { } outcome)
            {
                progress.Clear();
                await AnswerConsole.WriteAsync(terminal, outcome, asked.IsJson, cancel);
                return ExitCode.Of(outcome.Verdict, asked.Least);
            }
            progress.Clear();
            await AnswerConsole.WriteAsync(terminal, fault!, asked.IsJson);
            return ExitCode.Fault;
        });
        return command;
    }

    /// <summary>The command for everything at once.</summary>
    public static Command OfCheck(Terminal terminal)
    {
        var today = CommandOptions.Day();
        var (name, description) = (LayoutJobs.Check(null).Name, LayoutJobs.Check(null).Description);
        var command = Of(name, description, line => LayoutJobs.Check(line.GetValue(today)), terminal);
        command.Options.Add(today);
        return command;
    }
}
