using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Routes;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What was put in.</summary>
static class InputSection
{
    public static ReportSection Of(SolvedLayout solved, Shown shown)
    {
        var layout = solved.Layout;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(ReportTable.Of("Agent and supply", ["what", "value"], SupplyRows.Of(layout, shown)));
        if (!layout.Zones.IsEmpty)
            blocks.Add(ReportTable.Of("Zones", ["zone", "#wanted share", "people in it", "note"], layout.Zones.Select(zone => new[] { zone.Id, zone.Share is { } share ? Shown.Percent(share) : "by its nozzles", zone.Occupied ? "yes" : "no", zone.Note ?? "" })));
        blocks.Add(ReportTable.Of("Tubes", ["tube", "#bore", "#outside", "#roughness", "#least bend radius", "#working pressure", "material"], TubesOf(layout).Select(tube => Row(tube, shown))));
        blocks.Add(ReportTable.Of("Nozzles", ["nozzle", "zone", "type", "what it is", "#wanted share", "pressures it works at"],
            layout.Points.OfType<Nozzle>().Select(nozzle => new[] { nozzle.Id, nozzle.Zone ?? "", nozzle.Type ?? "", Holes(nozzle, shown), nozzle.Share is { } share ? Shown.Percent(share) : "", Range(nozzle.PressureRange, shown) })));
        blocks.Add(ReportTable.Of("Runs", ["run", "from", "to", "tube", "#length", "#rise", "bends", "fittings"], layout.Runs.Select(run => Row(layout, run, shown))));
        var others = layout.Points.Where(point => point is not Nozzle).ToArray();
        blocks.Add(ReportTable.Of("Points between", ["point", "what it is", "note"], others.Select(point => new[] { point.Id, Kind(point), point.Note ?? "" })));
        return new("Inputs", blocks.ToImmutable());
    }

    static IEnumerable<Tube> TubesOf(Layout layout) => layout.Runs.Select(run => run.Tube).DistinctBy(TubeLabel.Of);

    static string[] Row(Tube tube, Shown shown) =>
    [
        TubeLabel.Of(tube), shown.Of(tube.Bore), tube.OutsideDiameter is { } outside ? shown.Of(outside) : Shown.None, shown.Of(tube.Roughness),
        tube.MinimumBendRadius is { } radius ? shown.Of(radius) : Shown.None, tube.WorkingPressure is { } pressure ? shown.Gauge(pressure) : Shown.None, tube.Material ?? Shown.None,
    ];

    static string[] Row(Layout layout, Run run, Shown shown)
    {
        var bends = run.Bends.GroupBy(bend => (Angle: Degrees(bend, shown), Radius: shown.Of(bend.Radius))).Select(alike => Counted(alike.Sum(bend => (long)bend.Count), $"{alike.Key.Angle} R {alike.Key.Radius}"));
        var fittings = run.Fittings.Select(placed => Counted(placed.Count, (placed.Fitting.Name ?? placed.Fitting.Kind) + (placed.At is { } at ? $" at {shown.Of(at)}" : "")));
        var extra = run.LossCoefficient > 0 ? [$"K {Shown.Number(run.LossCoefficient)} besides"] : Array.Empty<string>();
        return [run.Id, layout.Points[run.From].Id, layout.Points[run.To].Id, TubeLabel.Of(run.Tube), shown.Of(run.Length), shown.Of(run.Rise).Replace('-', '−'), string.Join("; ", bends), string.Join("; ", fittings.Concat(extra))];
    }

    static string Degrees(Bend bend, Shown shown) => shown.Of(bend.Angle.Radians, QuantityKind.Angle);

    static string Counted(long count, string what) => count == 1 ? what : string.Create(CultureInfo.InvariantCulture, $"{count} × {what}");

    static string Holes(Nozzle nozzle, Shown shown) => nozzle.Orifice is { } orifice
        ? Counted(orifice.Count, $"{shown.Of(orifice.Diameter)} hole, C {Shown.Number(orifice.DischargeCoefficient)}")
        : $"K {shown.Of(nozzle.KFactor, QuantityKind.KFactor)}";

    static string Range(PressureRange? range, Shown shown) => range is { } known ? $"{shown.Gauge(known.Least)} to {shown.Gauge(known.Most)}" : "not stated";

    static string Kind(LayoutPoint point) => point switch
    {
        SupplyPoint => "supply",
        Tee tee => $"tee fed through the {(tee.FedThrough == TeePort.Branch ? "branch" : "run")}{(tee.Body is { } body ? $", {body.ToString().ToLowerInvariant()} body" : "")}",
        Junction => "junction without loss",
        Reducer => "reducer",
        Cap => "closed end",
        _ => throw new ArgumentOutOfRangeException(nameof(point), point, "No such point."),
    };
}
