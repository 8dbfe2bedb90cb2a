using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Calibration;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Benchmarks;

/// <summary>Times of calibrations in the library: the demo's, and one of as many points as the service takes, every run of them tried.</summary>
internal static class CalibrationFigures
{
    const int Largest = 500;

    public static void Print()
    {
        QuickFigures.Line("calibrate-demo", QuickFigures.Time(() => Answer(ExampleCatalogue.Find("raid-pickup")!.Value)));
        var large = Comb(Largest);
        QuickFigures.Line($"calibrate-{Largest}", QuickFigures.Time(() => Answer(large)));
    }

    static void Answer(ReadOnlyMemory<byte> body)
    {
        var layout = LayoutReader.Read(body).Layout ?? throw new InvalidOperationException("The document has faults.");
        var result = LayoutCalibration.Of(layout);
        if (result.Best is null || CalibrationFindings.Judge(layout, result, UnitSystem.Metric, CancellationToken.None).Findings.IsEmpty) throw new InvalidOperationException("The calibration has no answer.");
    }

    // A trunk with a nozzle at every tee; each gives what it should but for a scatter of 2 %.
    static byte[] Comb(int points)
    {
        var document = JsonNode.Parse(TreeDocument.Of(RandomTree.Plain(points, seed: points)))!;
        var flow = Flows.SteadyFlow.Solve(LayoutReader.Read(Encoding.UTF8.GetBytes(document.ToJsonString())).Layout!);
        var flows = new JsonObject();
        var layout = LayoutReader.Read(Encoding.UTF8.GetBytes(document.ToJsonString())).Layout!;
        foreach (var (at, nozzle) in flow.Nozzles.Index())
            flows[layout.Points[nozzle.Point].Id] = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{nozzle.MassFlow.KilogramsPerSecond * (1 + 0.02 * (at % 3 - 1)):R} kg/s");
        document["measured"] = new JsonObject { ["flows"] = flows };
        return Encoding.UTF8.GetBytes(document.ToJsonString());
    }
}
