using FlowCalc.Api.Documentation;
using FlowCalc.Api.Hosting;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.Options;
using Spectre.Console;

namespace FlowCalc.Api.Startup;

/// <summary>Solves the demo layout before the first request, prints it where that is wanted, and then the addresses to open.</summary>
internal sealed partial class DemoAtStart(IOptions<StartupSettings> settings, Readiness readiness, IAnsiConsole console, IServer server, ILogger<DemoAtStart> logger)
    : IHostedLifecycleService
{
    public Task StartingAsync(CancellationToken cancellationToken)
    {
        if (Solve(cancellationToken) is not { } demo)
            return Task.CompletedTask;
        readiness.Declare();
        if (settings.Value.Demo)
            DemoReport.Write(console, demo);
        return Task.CompletedTask;
    }

    public Task StartedAsync(CancellationToken cancellationToken)
    {
        if (settings.Value.Demo && server.Features.Get<IServerAddressesFeature>()?.Addresses is { Count: > 0 } addresses)
            DemoReport.WriteAddresses(console, addresses);
        return Task.CompletedTask;
    }

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    // A service that cannot solve its own demo starts all the same, so that /health/ready and the log can say so.
    Demo? Solve(CancellationToken cancel)
    {
        var reading = LayoutReader.Read(ContractExamples.DemoLayout, null, cancel);
        if (reading.Layout is not { } layout)
        {
            LogFaults(string.Join(' ', reading.Faults.Select(fault => $"{fault.Pointer}: {fault.Message}")));
            return null;
        }
        var flow = SteadyFlow.Solve(layout, cancel);
        if (!flow.Report.Converged)
        {
            LogFaults(flow.Report.Failure ?? "The solve did not converge.");
            return null;
        }
        var discharge = LayoutDischarge.Solve(layout, cancel);
        return new(layout, flow, FlowFindings.Judge(layout, flow, UnitSystem.Metric, cancel), discharge, DischargeFindings.JudgeWithCures(layout, discharge, UnitSystem.Metric, TaskScheduler.Default, cancel));
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "The demo layout has no answer, so this service is not ready. {Why}")]
    partial void LogFaults(string why);
}
