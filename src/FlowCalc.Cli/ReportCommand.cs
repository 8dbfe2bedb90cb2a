using System.CommandLine;
using FlowCalc.Cli.Jobs;
using FlowCalc.Cli.Writing;
using FlowCalc.Workbench.Reports.Paper;

namespace FlowCalc.Cli;

/// <summary>The command that writes a report.</summary>
static class ReportCommand
{
    /// <summary>The command.</summary>
    public static Command Of(Terminal terminal)
    {
        var command = new Command("report", "The report of a layout, to print and to keep, as PDF or HTML.");
        var options = new CommandOptions();
        options.AddTo(command, withJson: false);
        var output = CommandOptions.Output();
        var format = new Option<string?>("--format") { Description = "pdf or html; by the file's ending where left out, else html." };
        format.AcceptOnlyFromAmong("pdf", "html");
        var paper = CommandOptions.Word(new Option<PaperSize>("--paper") { Description = "a4 or letter.", DefaultValueFactory = _ => PaperSize.A4 });
        var date = CommandOptions.Line("--date", "The date that it bears, as it is to stand there; a blank where left out.");
        var by = CommandOptions.Line("--by", "Who prepared it, as it is to stand there; a blank where left out.");
        var today = CommandOptions.Day();
        foreach (var option in (Option[])[output, format, paper, date, by, today]) command.Options.Add(option);
        command.Validators.Add(result =>
        {
            var ending = Path.GetExtension(result.GetValue(output))?.ToLowerInvariant();
            var word = ending is ".htm" ? "html" : ending?.TrimStart('.');
            if (string.IsNullOrEmpty(word)) return;
            if (word is not ("pdf" or "html")) result.AddError($"--output: a report is a .pdf or an .html, not a {ending}.");
            else if (result.GetValue(format) is { } asked && asked != word) result.AddError($"--output: the file ends in {ending}, and --format asks for {asked}.");
        });
        command.SetAction(async (line, cancel) =>
        {
            var path = line.GetValue(output);
            var isPdf = (line.GetValue(format) ?? Path.GetExtension(path)?.TrimStart('.').ToLowerInvariant()) == "pdf";
            var job = new ReportJob(isPdf, line.GetValue(paper), line.GetValue(date), line.GetValue(by), line.GetValue(today));
            var asked = options.Asked(line);
            var (file, verdict, fault) = await job.DoAsync(await options.ReadAsync(line, terminal, cancel), asked, cancel);
            if (file is null)
            {
                await AnswerConsole.WriteAsync(terminal, fault!, isJson: false);
                return ExitCode.Fault;
            }
            await CommandOptions.WriteAsync(path, file, terminal, cancel);
            return ExitCode.Of(verdict, asked.Least);
        });
        return command;
    }
}
