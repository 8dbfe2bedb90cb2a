using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Charts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>The steady flow by nozzle, by zone and by run.</summary>
static class FlowSection
{
    public static ReportSection Of(SolvedLayout solved, Shown shown)
    {
        var (layout, flow) = (solved.Layout, solved.Flow);
        var supply = flow.Supply!;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        var instant = layout.Supply is BottleSupply ? "The start of the discharge, with every line full" : "The flow at the pressure that is held";
        blocks.Add(new ReportParagraph($"{instant}, at {shown.Of(layout.Temperature)}: {shown.Gauge(supply.ReservoirPressure)} drives {shown.Of(supply.MassFlow)} ({shown.Of(supply.VolumeFlow)}) through the line.{Band(solved, shown)}"));
        blocks.Add(ReportTable.Of("Nozzles", ["zone", "nozzle", "#pressure", "#flow", "#mass flow", "#share", "#wanted", "#deviation"], flow.Nozzles.Select(nozzle =>
        {
            var point = (Nozzle)layout.Points[nozzle.Point];
            return new[] { point.Zone ?? "", point.Id, shown.Gauge(nozzle.Pressure), shown.Of(nozzle.VolumeFlow), shown.Of(nozzle.MassFlow), Shown.Percent(nozzle.Share), Shown.Percent(nozzle.WantedShare), Shown.Deviation(nozzle.Deviation) };
        })));
        if (!flow.Zones.IsEmpty)
            blocks.Add(ReportTable.Of("Zones", ["zone", "#share", "#wanted", "#deviation"], flow.Zones.Select(zone => new[] { zone.Zone, Shown.Percent(zone.Share), Shown.Percent(zone.WantedShare), Shown.Deviation(zone.Deviation) })));
        blocks.Add(ReportTable.Of("Where the pressure is lost, from the supply to each nozzle", ["nozzle", .. DropKind.All.Select(kind => "#" + kind.Name), "#together"],
            flow.Nozzles.Select(nozzle => (string[])[layout.Points[nozzle.Point].Id, .. DropKind.All.Select(kind => Signed(shown, kind.Of(nozzle.Losses))), Signed(shown, nozzle.Losses.Total.Pascals)])));
        if (!flow.Nozzles.IsEmpty) blocks.Add(new ReportFigure(PathChart.Of(layout, flow, Worst(solved), shown, ChartSize.Paper.Width)));
        blocks.Add(ReportTable.Of("Runs", ["run", "#mass flow", "#speed", "#Reynolds", "#pressure at its start", "#at its end"], layout.Runs.Zip(flow.Runs, (run, told) =>
            new[] { run.Id, shown.Of(told.MassFlow), shown.Of(told.Velocity), told.Reynolds.ToString("0", CultureInfo.InvariantCulture), shown.Gauge(told.PressureIn), shown.Gauge(told.PressureOut) })));
        return new("Flow by nozzle", blocks.ToImmutable());
    }

    // The nozzle furthest below what is wanted; where nothing is wanted, the one of least pressure.
    static int Worst(SolvedLayout solved)
    {
        var nozzles = solved.Flow.Nozzles;
        return Enumerable.Range(0, nozzles.Length).MinBy(at => (nozzles[at].Deviation ?? 0, nozzles[at].Pressure.Pascals));
    }

    static string Signed(Shown shown, double pascals) => shown.Of(UnitsNet.Pressure.FromPascals(pascals)).Replace('-', '−');

    static string Band(SolvedLayout solved, Shown shown) => solved.Flow.Band is { } band
        ? $" What the model leaves open moves the flow from {shown.Of(band.Low)} to {shown.Of(band.High)}: {string.Join("; ", band.From)}."
        : "";
}
