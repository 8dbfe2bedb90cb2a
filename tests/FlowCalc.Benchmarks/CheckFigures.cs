using FlowCalc.Checks;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Benchmarks;

/// <summary>Time of everything that the demo has data for, from its text: read, worked out in every part and judged, with cures.</summary>
internal static class CheckFigures
{
    static readonly DateOnly Day = new(2026, 11, 25);

    public static void Print()
    {
        var body = ExampleCatalogue.Find("raid-pickup")!.Value;
        QuickFigures.Line("check-demo", QuickFigures.Time(() =>
        {
            var layout = LayoutReader.Read(body, new LayoutReaderOptions { Today = Day }).Layout ?? throw new InvalidOperationException("The document has faults.");
            var check = LayoutCheck.Of(layout, new(UnitSystem.Metric, Day, UnitsNet.Temperature.FromDegreesCelsius(5)), TaskScheduler.Default, CancellationToken.None);
            if (check.Parts.Any(part => part.Why is not null)) throw new InvalidOperationException("A part is not answered.");
        }));
    }
}
