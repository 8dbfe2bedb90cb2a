using FlowCalc.Api.Documentation;
using FlowCalc.Api.Hosting;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.Extensions.Options;
using Spectre.Console;
using Layout = FlowCalc.Layouts.Layout;

namespace FlowCalc.Api.Startup;

/// <summary>
/// Solves the demo layout's flow while the server gets up, which shows that the service can answer. Once it listens, works out the rest of
/// the demo where that is to be printed, and prints it with the addresses to open.
/// </summary>
internal sealed partial class DemoAtStart(IOptions<StartupSettings> settings, Readiness readiness, IAnsiConsole console, IServer server, ILogger<DemoAtStart> logger)
    : IHostedLifecycleService
{
    Task<(Layout Layout, FlowResult Flow)?> solving = Task.FromResult<(Layout, FlowResult)?>(null);

    public Task StartingAsync(CancellationToken cancellationToken)
    {
        solving = Task.Run(() => Solve(cancellationToken), cancellationToken);
        return Task.CompletedTask;
    }

    // Printed here and not before it listens, so that no caller waits for a table that is for people alone.
    public async Task StartedAsync(CancellationToken cancellationToken)
    {
        try
        {
            var solved = await solving;
            if (!settings.Value.Demo) return;
            if (solved is var (layout, flow)) DemoReport.Write(console, Demo.Of(layout, flow, cancellationToken));
            if (server.Features.Get<IServerAddressesFeature>()?.Addresses is { Count: > 0 } addresses) DemoReport.WriteAddresses(console, addresses);
        }
        catch (OperationCanceledException) when (cancellationToken.IsCancellationRequested)
        {
            // Told to stop before it was all there: it stops as at any other time.
        }
        catch (Exception unforeseen) when (solving.IsCompletedSuccessfully)
        {
            // The service answers all the same, so a table that cannot be made or printed does not end it.
            LogUnprinted(unforeseen);
        }
    }

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    // A service that cannot solve its own demo starts all the same, so that /health/ready and the log can say so.
    (Layout Layout, FlowResult Flow)? Solve(CancellationToken cancel)
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
        readiness.Declare();
        return (layout, flow);
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "The demo layout has no answer, so this service is not ready. {Why}")]
    partial void LogFaults(string why);

    [LoggerMessage(Level = LogLevel.Error, Message = "The demo could not be shown.")]
    partial void LogUnprinted(Exception unforeseen);
}
