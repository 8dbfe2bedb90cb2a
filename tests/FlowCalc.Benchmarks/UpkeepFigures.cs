using FlowCalc.Circuits;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Upkeep;

namespace FlowCalc.Benchmarks;

/// <summary>Times of the firing circuit and of the upkeep of the demo in the library: read, worked out and judged.</summary>
internal static class UpkeepFigures
{
    static readonly DateOnly Day = new(2026, 11, 25);

    public static void Print()
    {
        var body = ExampleCatalogue.Find("raid-pickup")!.Value;
        QuickFigures.Line("circuit-demo", QuickFigures.Time(() =>
        {
            var layout = Read(body, null);
            var result = CircuitAnalysis.Of(layout.Circuit!);
            if (CircuitFindings.Judge(layout, result, UnitSystem.Metric, CancellationToken.None).Verdict == Severity.Fail) throw new InvalidOperationException("The circuit fails.");
        }));
        QuickFigures.Line("upkeep-demo", QuickFigures.Time(() =>
        {
            var layout = Read(body, Day);
            var result = UpkeepCalculation.Of(layout, Day, UnitsNet.Temperature.FromDegreesCelsius(5));
            if (result.Expected?.Pressure is null || UpkeepFindings.Judge(layout, result, UnitSystem.Metric).Verdict == Severity.Fail) throw new InvalidOperationException("The upkeep fails.");
        }));
    }

    static Layout Read(ReadOnlyMemory<byte> body, DateOnly? today) =>
        LayoutReader.Read(body, new LayoutReaderOptions { Today = today }).Layout ?? throw new InvalidOperationException("The document has faults.");
}
