using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>What is written beside each point and run, and what is said of it in a tip.</summary>
/// <param name="layout">The layout.</param>
/// <param name="flow">Its flow; null where it has none.</param>
/// <param name="values">What its colours tell.</param>
/// <param name="found">What was found in it.</param>
/// <param name="colour">What the colours tell.</param>
/// <param name="shown">How numbers are written.</param>
sealed class Lettered(Layout layout, FlowResult? flow, DrawnValues values, FoundPlaces found, DrawingColour colour, Shown shown)
{
    const double IdSize = 9, ValueSize = 8;

    readonly Dictionary<int, NozzleFlow> nozzles = flow?.Nozzles.ToDictionary(nozzle => nozzle.Point) ?? [];
    readonly Func<UnitsNet.MassFlow, string>? flowText = flow is null ? null : DrawnValues.FlowText(layout, flow, shown);

    /// <summary>The label of a point.</summary>
    public LabelBlock OfPoint(int point)
    {
        var id = layout.Points[point].Id;
        List<LabelLine> lines = [Id(id)];
        if (nozzles.TryGetValue(point, out var nozzle))
        {
            lines.Add(Value($"{flowText!(nozzle.MassFlow)} · {Shown.Percent(nozzle.Share)}"));
            if (nozzle.Deviation is { } deviation) lines.Add(Value($"{Shown.Deviation(deviation)} of wanted"));
            if (colour == DrawingColour.Pressure) lines.Add(Value(shown.Gauge(nozzle.Pressure)));
        }
        else if (layout.Points[point] is SupplyPoint && flow?.Supply is { } supply) lines.Add(Value($"{shown.Gauge(supply.Pressure)} · {flowText!(supply.MassFlow)}"));
        return new([.. lines], found.Worst(id));
    }

    /// <summary>The label of a run.</summary>
    public LabelBlock OfRun(int run)
    {
        var id = layout.Runs[run].Id;
        var bore = Bore(layout.Runs[run]);
        return new([Id(id), Value(values.RunScale is null ? bore : $"{bore} · {values.RunTexts[run]}")], found.Worst(id));
    }

    /// <summary>What is said of a point.</summary>
    public string TipOfPoint(int point)
    {
        var it = layout.Points[point];
        var numbers = nozzles.TryGetValue(point, out var nozzle)
            ? $", {shown.Gauge(nozzle.Pressure)}, {flowText!(nozzle.MassFlow)}, share {Shown.Percent(nozzle.Share)}, wanted {Shown.Percent(nozzle.WantedShare)}, deviation {Shown.Deviation(nozzle.Deviation)}"
            : flow is not null ? $", {shown.Gauge(flow.PointPressures[point])}" : "";
        var zone = it is Nozzle { Zone: { } name } ? $" in {name}" : "";
        return $"{it.Id}: {PointSymbols.Word(layout, it)}{zone}{numbers}.{found.Words(it.Id)}";
    }

    /// <summary>What is said of a run.</summary>
    public string TipOfRun(int run)
    {
        var it = layout.Runs[run];
        var fittings = string.Concat(it.Fittings.Select(placed => $", {(placed.Count > 1 ? $"{placed.Count} × " : "")}{placed.Fitting.Name ?? placed.Fitting.Kind}"));
        var numbers = flow is null ? "" : $", {flowText!(flow.Runs[run].MassFlow)} at {shown.Of(flow.Runs[run].Velocity)}, {shown.Gauge(flow.Runs[run].PressureOut)} at its end";
        return $"{it.Id}: run from {layout.Points[it.From].Id} to {layout.Points[it.To].Id}, bore {Bore(it)}, length {shown.Of(it.Length)}{fittings}{numbers}.{found.Words(it.Id)}";
    }

    /// <summary>The numbers that matter most; empty without a flow.</summary>
    public string Summary()
    {
        if (flow?.Supply is not { } supply) return "";
        double[] deviations = [.. flow.Nozzles.Select(nozzle => nozzle.Deviation).OfType<double>()];
        var spread = deviations.Length > 0 ? $", shares from {Shown.Deviation(deviations.Min())} to {Shown.Deviation(deviations.Max())} of the wanted ones" : "";
        return $" {flow.Nozzles.Length} nozzles give {flowText!(supply.MassFlow)} together{spread}.";
    }

    string Bore(Run run) => shown.Of(run.Tube.Bore);

    static LabelLine Id(string id) => new(DrawnText.Shortened(id, IdSize, isBold: true), IdSize, Ink.Line, IsBold: true);

    static LabelLine Value(string text) => new(text, ValueSize, Ink.Line);
}
