using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using Spectre.Console;

namespace FlowCalc.Api.Startup;

/// <summary>Prints the solved demo for a person.</summary>
internal static class DemoReport
{
    /// <summary>The table of nozzles, the findings with their cures, the supply and the cautions.</summary>
    public static void Write(IAnsiConsole console, Demo demo)
    {
        var layout = demo.Layout;
        console.WriteLine();
        console.Write(new Text($"Demo layout: {layout.Title} ({layout.Agent.Title}, {demo.Shown.Of(layout.Temperature)})", DemoWords.Bold));
        console.WriteLine();
        console.Write(Nozzles(demo));
        console.WriteLine(Supply(demo));
        console.WriteLine();
        WriteFindings(console, demo.Judgement);
        DischargeReport.Write(console, demo);
        console.WriteLine("Cautions: " + string.Join(' ', Cautions.For(layout)));
        console.WriteLine();
    }

    /// <summary>What to open in a browser, and how to stop.</summary>
    public static void WriteAddresses(IAnsiConsole console, IEnumerable<string> addresses)
    {
        foreach (var address in addresses.Select(Reachable))
        {
            console.WriteLine($"Open {address}/                       the workbench: the same layout to look at and to change");
            console.WriteLine($"     {address}/docs                   the calls, readable, to try out");
            console.WriteLine($"     {address}/openapi/v1.json        the contract");
            console.WriteLine($"     {address}/v1/examples            example layouts to POST to /v1/flow or /v1/discharge");
        }
        console.WriteLine("Ctrl+C stops.");
    }

    static Table Nozzles(Demo demo)
    {
        var (table, shown) = (new Table { Border = TableBorder.Simple }, demo.Shown);
        table.AddColumns("Zone", "Nozzle");
        foreach (var title in (string[])["Pressure", "Flow", "Share", "Wanted", "Deviation"])
            table.AddColumn(new TableColumn(title).RightAligned());
        table.AddColumn("Verdict");
        foreach (var flow in demo.Flow.Nozzles)
        {
            var nozzle = (Nozzle)demo.Layout.Points[flow.Point];
            var verdict = demo.Judgement.Findings.Where(finding => finding.Where.Contains(nozzle.Id)).Select(finding => finding.Severity).DefaultIfEmpty(Severity.Pass).Max();
            table.AddRow(
                new Text(nozzle.Zone ?? Shown.None), new Text(nozzle.Id), new Text(shown.Gauge(flow.Pressure)), new Text(shown.Of(flow.VolumeFlow)),
                new Text(Shown.Percent(flow.Share)), new Text(Shown.Percent(flow.WantedShare)), new Text(Shown.Deviation(flow.Deviation)), new Text(DemoWords.Word(verdict), DemoWords.Colour(verdict)));
        }
        return table;
    }

    static string Supply(Demo demo)
    {
        var (supply, shown) = (demo.Flow.Supply!, demo.Shown);
        return $"Supply: {shown.Gauge(supply.ReservoirPressure)} {(demo.Layout.Supply is BottleSupply ? "in the bottle" : "held")}, {shown.Gauge(supply.Pressure)} where the tube starts, "
            + $"{shown.Of(supply.MassFlow)} ({shown.Of(supply.VolumeFlow)}) at this instant.";
    }

    static void WriteFindings(IAnsiConsole console, FlowJudgement judgement)
    {
        console.Write(new Paragraph("Verdict: ").Append(DemoWords.Word(judgement.Verdict), DemoWords.Colour(judgement.Verdict)));
        console.WriteLine();
        DemoWords.WriteFindings(console, judgement.Findings);
        console.WriteLine();
    }

    // A wildcard address is where the server listens, not where a browser can go.
    static string Reachable(string address) => address.TrimEnd('/').Replace("://[::]", "://localhost", StringComparison.Ordinal)
        .Replace("://0.0.0.0", "://localhost", StringComparison.Ordinal).Replace("://+", "://localhost", StringComparison.Ordinal).Replace("://*", "://localhost", StringComparison.Ordinal);
}
