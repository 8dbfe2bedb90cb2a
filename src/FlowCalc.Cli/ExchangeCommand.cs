using System.CommandLine;
using System.Text;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Cli.Writing;
using FlowCalc.Exchange;
using FlowCalc.Flows;

namespace FlowCalc.Cli;

/// <summary>The command that writes a layout for another program.</summary>
static class ExchangeCommand
{
    /// <summary>The command.</summary>
    public static Command Of(Terminal terminal)
    {
        var command = new Command("exchange", "A layout of a liquid as an input file of EPANET, an open program for pipe networks, to look at its steady flow with other software.");
        var options = new CommandOptions();
        options.AddTo(command, withJson: false, withVerdict: false);
        var output = CommandOptions.Output();
        command.Options.Add(output);
        command.SetAction(async (line, cancel) =>
        {
            if (Written(await options.ReadAsync(line, terminal, cancel), out var fault, cancel) is not { } file)
            {
                await AnswerConsole.WriteAsync(terminal, fault!, isJson: false);
                return ExitCode.Fault;
            }
            await CommandOptions.WriteAsync(line.GetValue(output), file, terminal, cancel);
            return ExitCode.Passed;
        });
        return command;
    }

    static byte[]? Written(ReadOnlyMemory<byte> document, out Problem? fault, CancellationToken cancel)
    {
        if (JsonBody.Read(document, LayoutCall.Reader(new()), out fault, cancel) is not { } layout) return null;
        var flow = SteadyFlow.Solve(layout, cancel);
        fault = EpanetInput.Refusal(layout, flow) is { } refusal ? Problems.NotWritten(refusal) : null;
        return fault is null ? Encoding.UTF8.GetBytes(EpanetInput.Write(layout, flow)) : null;
    }
}
