using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Benchmarks;

/// <summary>Times of the coverage of the demo in the library: read, worked out over a discharge that is there already, and judged.</summary>
internal static class CoverageFigures
{
    public static void Print()
    {
        var body = ExampleCatalogue.Find("raid-pickup")!.Value;
        var discharge = LayoutDischarge.Solve(Read(body));
        QuickFigures.Line("coverage-demo", QuickFigures.Time(() =>
        {
            var layout = Read(body);
            var result = LayoutCoverage.Solve(layout, discharge);
            if (result.Surfaces.IsEmpty || CoverageFindings.Judge(layout, result, discharge, null, UnitSystem.Metric, CancellationToken.None).Verdict == Severity.Fail)
                throw new InvalidOperationException("The coverage fails.");
        }));
    }

    static Layout Read(ReadOnlyMemory<byte> body) => LayoutReader.Read(body, new LayoutReaderOptions()).Layout ?? throw new InvalidOperationException("The document has faults.");
}
