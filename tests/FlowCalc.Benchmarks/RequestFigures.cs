using System.Diagnostics;
using System.Globalization;
using System.Net;
using System.Net.Http.Headers;
using System.Text.Json;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Benchmarks;

/// <summary>
/// The whole call over a real loopback connection, beside an endpoint on the same server that only parses a JSON body and writes it back.
/// </summary>
internal static class RequestFigures
{
    public const int Connections = 4;

    public static async Task PrintAsync(IEnumerable<int> sizes)
    {
        await using var plain = new WebApplicationFactory<Program>();
        await using var factory = plain.WithWebHostBuilder(web => web
            .UseContentRoot(AppContext.BaseDirectory)
            .UseEnvironment("Production")
            .UseSetting("Startup:Demo", "false")
            .UseSetting("Logging:LogLevel:Default", "Warning")
            .UseSetting("Limits:FlowTime", "00:01:00")
            .UseSetting("Limits:DischargeTime", "00:01:00")
            .ConfigureServices(services => services.AddSingleton<IStartupFilter, EchoEndpoint>()));
        factory.UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        factory.StartServer();
        var address = factory.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()!.Addresses.First();
        using var handler = new SocketsHttpHandler { MaxConnectionsPerServer = Connections };
        using var client = new HttpClient(handler) { BaseAddress = new Uri(address) };

        await WarmUpAsync(client);
        await PrintDemoAsync(client);
        await PrintDischargesAsync(client);
        foreach (var points in sizes)
        {
            var tree = RandomTree.Tees(points, seed: points);
            var uneven = TreeDocument.Of(tree);
            var body = TreeDocument.Of(tree, Shares(uneven, points));
            QuickFigures.Line($"flow-core-{points}", QuickFigures.Time(() => Core(body)));
            var (flow, echo) = await PairAsync(client, body);
            QuickFigures.Line($"flow-request-{points}", flow);
            QuickFigures.Line($"flow-request-cures-{points}", (await PairAsync(client, uneven)).Flow);
            if (points > 100) continue;
            QuickFigures.Line($"echo-request-{points}", echo);
            Over($"flow-over-echo-{points}", flow, echo);
            var level = RandomTree.Plain(points, seed: points);
            var (plainFlow, plainEcho) = await PairAsync(client, TreeDocument.Of(level, Shares(TreeDocument.Of(level), points)));
            QuickFigures.Line($"flow-request-plain-{points}", plainFlow);
            Over($"flow-over-echo-plain-{points}", plainFlow, plainEcho);
        }
    }

    // The whole window of cases of an answer: three temperatures, three attitudes.
    static async Task PrintDischargesAsync(HttpClient client)
    {
        var body = CombDocument.Of(10);
        await MicrosecondsAsync(client, "/v1/discharge", body);
        var (together, alone) = (new List<double>(), new List<double>());
        for (var turn = 0; turn < 5; turn++)
        {
            together.Add(await MicrosecondsAsync(client, "/v1/discharge", body));
            alone.Add(await MicrosecondsAsync(client, "/v1/discharge", body, connections: 1));
        }
        together.Sort();
        alone.Sort();
        QuickFigures.Line($"cut-list-request-{CutListFigures.Runs}", await MicrosecondsAsync(client, "/v1/cut-list", CutListFigures.Document()));
        QuickFigures.Line("discharge-request-10", together[2]);
        QuickFigures.Line("discharge-request-alone-10", alone[2]);
    }

    // The demo as anybody sends it first, with its findings and the cures that are looked for.
    static async Task PrintDemoAsync(HttpClient client)
    {
        var (flow, echo) = await PairAsync(client, ExampleCatalogue.Find("raid-pickup")!.Value.ToArray());
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"flow-rps {1e6 / flow:F0} /s"));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"echo-rps {1e6 / echo:F0} /s"));
        Over("flow-over-echo-demo", flow, echo);
    }

    static void Over(string name, double flow, double echo) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{name} {100 * echo / flow:F0} %"));

    // The runtime compiles what is called often anew, in the background; a service that has run for half a minute is past that. The demo is last, whose cures take the longest to come to it.
    static async Task WarmUpAsync(HttpClient client)
    {
        foreach (var body in (byte[][])[TreeDocument.Of(RandomTree.Tees(12, seed: 1)), ExampleCatalogue.Find("raid-pickup")!.Value.ToArray()])
            for (var turn = 0; turn < (QuickFigures.IsBrief ? 5 : 25); turn++)
            {
                await MicrosecondsAsync(client, "/v1/flow", body);
                await MicrosecondsAsync(client, EchoEndpoint.Path, body);
            }
    }

    // With the shares that its nozzles get for wishes a layout is balanced: no cure is looked for, as in most requests of a finished design.
    static double[] Shares(byte[] document, int points)
    {
        var shares = new double[points];
        foreach (var nozzle in SteadyFlow.Solve(LayoutReader.Read(document).Layout!).Nozzles) shares[nozzle.Point] = nozzle.Share;
        return shares;
    }

    // What the call does without HTTP: read, solve, judge.
    static void Core(byte[] body)
    {
        var layout = LayoutReader.Read(body).Layout ?? throw new InvalidOperationException("The document has faults.");
        FlowFindings.Judge(layout, SteadyFlow.Solve(layout), UnitSystem.Metric, CancellationToken.None);
    }

    // Turn and turn about, so that a busy machine slows both.
    static async Task<(double Flow, double Echo)> PairAsync(HttpClient client, byte[] body)
    {
        var (flow, echo) = (new List<double>(), new List<double>());
        await MicrosecondsAsync(client, "/v1/flow", body);
        await MicrosecondsAsync(client, EchoEndpoint.Path, body);
        for (var turn = 0; turn < 5; turn++)
        {
            flow.Add(await MicrosecondsAsync(client, "/v1/flow", body));
            echo.Add(await MicrosecondsAsync(client, EchoEndpoint.Path, body));
        }
        flow.Sort();
        echo.Sort();
        return (flow[2], echo[2]);
    }

    // Time a request, as the reciprocal of the requests a second that all connections together get through.
    static async Task<double> MicrosecondsAsync(HttpClient client, string path, byte[] body, int connections = Connections)
    {
        var watch = Stopwatch.StartNew();
        var counts = await Task.WhenAll(Enumerable.Range(0, connections).Select(_ => Task.Run(async () =>
        {
            var count = 0;
            do
            {
                await SendAsync(client, path, body);
                count++;
            }
            while (watch.ElapsedMilliseconds < 400);
            return count;
        })));
        return watch.Elapsed.TotalMicroseconds / counts.Sum();
    }

    public static async Task SendAsync(HttpClient client, string path, byte[] body)
    {
        using var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        using var response = await client.PostAsync(new Uri(path, UriKind.Relative), content);
        await response.Content.CopyToAsync(Stream.Null);
        if (response.StatusCode != HttpStatusCode.OK) throw new InvalidOperationException($"{path}: {response.StatusCode}");
    }

    sealed class EchoEndpoint : IStartupFilter
    {
        public const string Path = "/echo";

        public Action<IApplicationBuilder> Configure(Action<IApplicationBuilder> next) => app =>
        {
            app.UseRouting();
            app.UseEndpoints(routes => routes.MapPost(Path, (JsonElement body) => body));
            next(app);
        };
    }
}
