using System.Globalization;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Workbench.Figures;
using Spectre.Console;

namespace FlowCalc.Api.Startup;

/// <summary>Prints the demo's discharge for a person: a row a case, and its findings.</summary>
internal static class DischargeReport
{
    /// <summary>The table of cases and what was found.</summary>
    public static void Write(IAnsiConsole console, Demo demo)
    {
        console.Write(new Text("Its discharge, from the opening valve to the empty bottle:", DemoWords.Bold));
        console.WriteLine();
        console.Write(Cases(demo));
        console.Write(new Paragraph("Verdict: ").Append(DemoWords.Word(demo.DischargeJudgement.Verdict), DemoWords.Colour(demo.DischargeJudgement.Verdict)));
        console.WriteLine();
        DemoWords.WriteFindings(console, demo.DischargeJudgement.Findings.Where(finding => finding.Severity == Severity.Fail));
        WriteMilder(console, demo.DischargeJudgement);
        console.WriteLine();
    }

    static Table Cases(Demo demo)
    {
        var table = new Table { Border = TableBorder.Simple };
        table.AddColumns("Case", "");
        foreach (var title in (string[])["95 % out", "Band", "First, last", "Liquid to", "Left", "Most starved"])
            table.AddColumn(new TableColumn(title).RightAligned());
        foreach (var one in demo.Discharge.Cases)
        {
            var celsius = one.Temperature.DegreesCelsius.ToString("0.#", CultureInfo.InvariantCulture) + " °C";
            if (one.Failure is { } failure)
            {
                table.AddRow(new Text(celsius), new Text(one.Attitude.Name), new Text(failure.Message));
                continue;
            }
            var arrivals = one.Nozzles.Where(nozzle => nozzle.Arrival is not null).Select(nozzle => nozzle.Arrival!.Value.Seconds).ToArray();
            table.AddRow(
                new Text(celsius), new Text(one.Attitude.Name), new Text(Seconds(one.Time95?.Seconds)),
                new Text(one.Band is { } band ? $"{Number(band.Time95.Low?.Seconds, "0.0")}–{Seconds(band.Time95.High?.Seconds)}" : "–"),
                new Text(arrivals.Length > 0 ? $"{Number(arrivals.Min(), "0.00")}, {Number(arrivals.Max(), "0.00")} s" : "–"),
                new Text(Seconds(one.LiquidEnd?.Seconds)),
                new Text(Number(1e3 * (one.LeftInBottle + one.LeftInTubes).Kilograms, "0") + " g"),
                new Text(Starved(demo, one)));
        }
        return table;
    }

    static string Starved(Demo demo, DischargeCase one)
    {
        var worst = one.Nozzles.MinBy(nozzle => nozzle.Deviation ?? double.PositiveInfinity);
        return worst?.Deviation is { } deviation ? $"{demo.Layout.Points[worst.Point].Id} {Shown.Deviation(deviation)}" : "–";
    }

    // The warnings of a discharge repeat much of the flow's; the answer to /v1/discharge tells them in full.
    static void WriteMilder(IAnsiConsole console, DischargeJudgement judgement)
    {
        var milder = judgement.Findings.Where(finding => finding.Severity < Severity.Fail).GroupBy(finding => (finding.Severity, finding.Code))
            .Select(group => $"{DemoWords.Word(group.Key.Severity)} {group.Key.Code} ({string.Join(", ", group.SelectMany(finding => finding.Where).Distinct().Take(8))})");
        console.WriteLine("Also: " + string.Join("; ", milder) + ".");
    }

    static string Seconds(double? seconds) => seconds is null ? "never" : Number(seconds, "0.0") + " s";

    static string Number(double? number, string format) => number?.ToString(format, CultureInfo.InvariantCulture) ?? "never";
}
