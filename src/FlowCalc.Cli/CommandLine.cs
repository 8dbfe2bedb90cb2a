using System.CommandLine;
using FlowCalc.Api.Answers;
using FlowCalc.Cli.Jobs;

namespace FlowCalc.Cli;

/// <summary>The command line: its commands, and how a line of words is carried out.</summary>
static class CommandLine
{
    /// <summary>Carries out a line of words.</summary>
    /// <param name="words">The words.</param>
    /// <param name="terminal">Where it reads and writes.</param>
    /// <param name="cancel">Ends it.</param>
    /// <returns>One of <see cref="ExitCode"/>.</returns>
    public static async Task<int> RunAsync(IReadOnlyList<string> words, Terminal terminal, CancellationToken cancel = default)
    {
        await using var output = new StreamWriter(terminal.Output, leaveOpen: true);
        var parsed = Commands(terminal).Parse(words);
        if (parsed.Errors.Count > 0)
        {
            foreach (var error in parsed.Errors) await terminal.Error.WriteLineAsync(error.Message);
            await terminal.Error.WriteLineAsync("flowcalc --help tells the commands, flowcalc <command> --help what each takes.");
            return ExitCode.Fault;
        }
        try
        {
            return await parsed.InvokeAsync(new InvocationConfiguration { Output = output, Error = terminal.Error, EnableDefaultExceptionHandler = false }, cancel);
        }
        catch (OperationCanceledException)
        {
            await terminal.Error.WriteLineAsync("It was ended before there was an answer.");
        }
        catch (Exception unread) when (unread is IOException or UnauthorizedAccessException)
        {
            await terminal.Error.WriteLineAsync(unread.Message);
        }
        catch (NotFiniteException notFinite)
        {
            await terminal.Error.WriteLineAsync(notFinite.Message);
        }
        return ExitCode.Fault;
    }

    static RootCommand Commands(Terminal terminal)
    {
        var root = new RootCommand("FlowCalc: flow and discharge of plumbed-in fire-suppression lines, from a layout document in JSON. Ends with 0 where the verdict is a pass, a note or a warning, with 1 where it fails, and with 2 where there is no answer.");
        IJob[] jobs = [LayoutJobs.Flow, LayoutJobs.Discharge, StudyJobs.Compare, StudyJobs.Size, StudyJobs.Tolerance, LayoutJobs.CutList];
        foreach (var job in jobs)
            root.Subcommands.Add(AnswerCommand.Of(job.Name, job.Description, _ => job, terminal));
        root.Subcommands.Add(AnswerCommand.OfCheck(terminal));
        root.Subcommands.Add(ReportCommand.Of(terminal));
        root.Subcommands.Add(ExchangeCommand.Of(terminal));
        return root;
    }
}
