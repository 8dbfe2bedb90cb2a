using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Solving;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Benchmarks;

/// <summary>Time of a drawing of a layout that is solved already: its geometry and its SVG text.</summary>
internal static class DrawingFigures
{
    /// <summary>Points of the layouts.</summary>
    public const int Points = 100;

    public static void Print()
    {
        using var services = new ServiceCollection().BuildServiceProvider();
        var markup = new StaticMarkup(services, NullLoggerFactory.Instance);
        Print($"drawing-{Points}", TreeDocument.Of(RandomTree.Tees(Points, seed: Points)), DrawingView.Tree, markup);
        Print($"drawing-isometric-{Points}", CutListFigures.Document(Points - 2), DrawingView.Isometric, markup);
    }

    static void Print(string name, byte[] document, DrawingView view, StaticMarkup markup)
    {
        var layout = LayoutReader.Read(document).Layout ?? throw new InvalidOperationException("The document has faults.");
        var solved = SolvedLayout.OfFlow(layout, UnitSystem.Metric, CancellationToken.None);
        if (!solved.Flow.Report.Converged) throw new InvalidOperationException(solved.Flow.Report.Failure);
        var (choice, shown) = (new DrawingChoice { View = view }, new Shown(UnitSystem.Metric, layout.AmbientPressure));
        // Nothing in it waits, so that the task has ended when it is returned.
        QuickFigures.Line(name, QuickFigures.Time(() => markup.SvgAsync(LayoutDrawing.Of(solved, choice, shown)).GetAwaiter().GetResult()));
    }
}
