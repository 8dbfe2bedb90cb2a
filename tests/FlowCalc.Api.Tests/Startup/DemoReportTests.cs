using System.Net;
using System.Text.RegularExpressions;
using FlowCalc.Api.Startup;
using FlowCalc.Api.Tests.Hosting;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Tests.Startup;

public sealed class DemoReportTests
{
    [Fact]
    public async Task Start_prints_the_solved_demo_its_findings_the_cure_and_the_addresses_as_plain_text()
    {
        var text = await Printed("true");

        foreach (var nozzle in (string[])["cell-left", "cell-right", "driver", "navigator", "turbo", "fuel-rail", "exhaust"])
            Assert.Contains(nozzle, text, StringComparison.Ordinal);
        foreach (var word in (string[])["Pressure", "Share", "Wanted", "Deviation", "uneven-branch", "R11", "Cure:", "feed", "Supply:", "Cautions:", "/docs", "/openapi/v1.json"])
            Assert.Contains(word, text, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', text);
        Assert.DoesNotContain("[/]", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_nozzle_has_a_line_of_its_own()
    {
        var lines = (await Printed("true")).Split('\n');

        var line = Assert.Single(lines, line => line.Contains("fuel-rail", StringComparison.Ordinal) && line.Contains("engine", StringComparison.Ordinal));
        Assert.Matches(@"engine\s+fuel-rail\s+[\d.]+ bar\s+[\d.]+ L/min\s+[\d.]+ %\s+18\.0 %\s+−[\d.]+ %\s+(warn|FAIL)", line);
    }

    [Fact]
    public async Task Every_case_of_the_discharge_has_a_line_of_its_own()
    {
        var lines = (await Printed("true")).Split('\n');

        foreach (var celsius in (string[])["0", "20", "60"])
            foreach (var attitude in (string[])["upright", "on its roof", "on its left side"])
                Assert.Single(lines, line => Regex.IsMatch(line,
                    $@"^\s+{celsius} °C\s+{attitude}\s+[\d.]+ s\s+[\d.]+–[\d.]+ s\s+[\d.]+, [\d.]+ s\s+[\d.]+ s\s+\d+ g\s+(fuel-rail|exhaust) −[\d.]+ %\s*$"));
        Assert.Contains(lines, line => line.Contains("line-surge", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Nothing_is_printed_where_the_settings_say_so() => Assert.Empty(await Printed("false"));

    [Fact]
    public async Task Stop_while_the_demo_is_worked_out_is_no_failure_of_the_start()
    {
        await using var text = new StringWriter();
        await using var service = Service.With(("Startup:Demo", "false"));
        await using var watched = service.WithWebHostBuilder(host => host.ConfigureServices(services => services.AddSingleton(DemoConsole.Plain(text))));
        var demo = ActivatorUtilities.CreateInstance<DemoAtStart>(watched.Services, Options.Create(new StartupSettings { Demo = true }));
        using var stop = new CancellationTokenSource();
        await demo.StartingAsync(stop.Token);
        await stop.CancelAsync();

        await demo.StartedAsync(stop.Token);

        Assert.Empty(text.ToString());
    }

    static async Task<string> Printed(string demo)
    {
        await using var text = new StringWriter();
        await using var service = Service.With(("Startup:Demo", demo));
        await using var watched = service.WithWebHostBuilder(host => host.ConfigureServices(services => services.AddSingleton(DemoConsole.Plain(text))));
        watched.UseKestrel(kestrel => kestrel.Listen(IPAddress.Loopback, 0));
        watched.StartServer();
        return text.ToString();
    }
}
