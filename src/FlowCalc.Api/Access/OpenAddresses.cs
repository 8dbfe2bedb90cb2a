using System.Net;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace FlowCalc.Api.Access;

/// <summary>Ends a start on addresses that other machines reach, where no key was set and that was not waived. Until then the gate lets none of them in.</summary>
internal sealed class OpenAddresses(IServer server, AccessSettings settings) : IHostedLifecycleService
{
    public Task StartedAsync(CancellationToken cancellationToken)
    {
        var open = (server.Features.Get<IServerAddressesFeature>()?.Addresses ?? []).Where(address => !IsOwn(address)).ToArray();
        if (open.Length > 0 && settings.Keys.Count == 0 && !settings.WithoutKeys)
            throw new InvalidOperationException(
                $"The service listens on {string.Join(", ", open)}, where other machines reach it, and no key is set. Set {AccessSettings.Section}:Keys (in the environment {AccessSettings.Section}__Keys__0), or listen on localhost, or state {AccessSettings.Section}:WithoutKeys=true where something else keeps strangers out.");
        return Task.CompletedTask;
    }

    /// <summary>Whether an address is reached from this machine alone.</summary>
    /// <param name="address">What a server listens on.</param>
    public static bool IsOwn(string address) =>
        BindingAddress.Parse(address) is var bound
        && (bound.IsUnixPipe || bound.IsNamedPipe || bound.Host.Equals("localhost", StringComparison.OrdinalIgnoreCase) || (IPAddress.TryParse(bound.Host, out var ip) && IPAddress.IsLoopback(ip)));

    public Task StartingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StartAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppingAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StopAsync(CancellationToken cancellationToken) => Task.CompletedTask;

    public Task StoppedAsync(CancellationToken cancellationToken) => Task.CompletedTask;
}
