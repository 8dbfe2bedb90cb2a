using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>The drawing of the layout.</summary>
static class DrawingSection
{
    public static ReportSection Of(SolvedLayout solved, Shown shown, CancellationToken cancel) =>
        new("Layout", [new ReportFigure(LayoutDrawing.Of(solved, new DrawingChoice { HasCautions = false }, shown, cancel))]);
}
