using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Benchmarks;

/// <summary>Time of a mount in the library: read, worked out in every case and direction, judged, changes tried.</summary>
internal static class MountFigures
{
    public static void Print()
    {
        var body = ExampleCatalogue.Find("raid-pickup") ?? throw new InvalidOperationException("There is no such example.");
        QuickFigures.Line("mount-demo", QuickFigures.Time(() =>
        {
            var layout = LayoutReader.Read(body).Layout ?? throw new InvalidOperationException("The document has faults.");
            var result = LayoutMount.Solve(layout);
            if (MountFindings.JudgeWithCures(layout, result, UnitSystem.Metric, CancellationToken.None).Verdict == Severity.Fail) throw new InvalidOperationException("The mount fails.");
        }));
    }
}
