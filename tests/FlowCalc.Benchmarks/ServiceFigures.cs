using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Sockets;
using FlowCalc.Examples;

namespace FlowCalc.Benchmarks;

/// <summary>The service in a process of its own: how soon it is ready, and how much memory it holds after many requests.</summary>
internal static class ServiceFigures
{
    const int Starts = 5;

    /// <summary>Prints <c>startup-ms</c>, the median from the start of the process to its first ready, and <c>rss-mb</c>.</summary>
    /// <param name="requests">How many flows of the demo are asked for before the memory is read.</param>
    public static async Task PrintAsync(int requests)
    {
        var times = new double[Starts];
        for (var start = 0; start < Starts; start++)
        {
            var watch = Stopwatch.StartNew();
            await using var service = Child.Start();
            await service.UntilReadyAsync();
            times[start] = watch.Elapsed.TotalMilliseconds;
        }
        Array.Sort(times);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"startup-ms {times[Starts / 2]:F0} ms"));

        await using var busy = Child.Start();
        await busy.UntilReadyAsync();
        var before = busy.Resident;
        await busy.FlowsAsync(requests);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"rss-mb {busy.Resident / 1048576.0:F0} MiB after {requests} flows, {before / 1048576.0:F0} MiB when ready"));
    }

    sealed class Child(Process process, HttpClient client) : IAsyncDisposable
    {
        public static Child Start()
        {
            using var probe = new TcpListener(IPAddress.Loopback, 0);
            probe.Start();
            var address = $"http://127.0.0.1:{((IPEndPoint)probe.LocalEndpoint).Port}";
            probe.Stop();
            var start = new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "FlowCalc.Api.dll")]) { WorkingDirectory = AppContext.BaseDirectory };
            foreach (var (name, value) in new[] { ("ASPNETCORE_URLS", address), ("ASPNETCORE_ENVIRONMENT", "Production"), ("Startup__Demo", "false"), ("Logging__LogLevel__Default", "Warning") })
                start.Environment[name] = value;
            return new(Process.Start(start)!, new HttpClient { BaseAddress = new Uri(address) });
        }

        public long Resident
        {
            get
            {
                process.Refresh();
                return process.WorkingSet64;
            }
        }

        public async Task UntilReadyAsync()
        {
            var patience = Stopwatch.StartNew();
            while (true)
            {
                if (process.HasExited || patience.Elapsed > TimeSpan.FromMinutes(1)) throw new InvalidOperationException("The service did not become ready.");
                try
                {
                    using var answer = await client.GetAsync(new Uri("/health/ready", UriKind.Relative));
                    if (answer.IsSuccessStatusCode) return;
                }
                catch (HttpRequestException)
                {
                    // It does not listen yet.
                }
                await Task.Delay(5);
            }
        }

        public async Task FlowsAsync(int requests)
        {
            var body = ExampleCatalogue.Find("raid-pickup")!.Value.ToArray();
            var left = requests;
            await Task.WhenAll(Enumerable.Range(0, RequestFigures.Connections).Select(_ => Task.Run(async () =>
            {
                while (Interlocked.Decrement(ref left) >= 0) await RequestFigures.SendAsync(client, "/v1/flow", body);
            })));
        }

        public async ValueTask DisposeAsync()
        {
            client.Dispose();
            if (!process.HasExited) process.Kill();
            await process.WaitForExitAsync();
            process.Dispose();
        }
    }
}
