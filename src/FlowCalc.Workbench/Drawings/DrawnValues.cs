using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using UnitsNet;

namespace FlowCalc.Workbench.Drawings;

/// <summary>The values that a drawing tells by its colours; none without a flow.</summary>
/// <param name="RunScale">Steps of the runs, and of the nozzles where they have none of their own; null where colours tell nothing.</param>
/// <param name="NozzleScale">Steps of the nozzles; null where colours tell nothing or no nozzle has a value.</param>
/// <param name="Runs">A value a run, in the order of the layout; empty where colours tell nothing.</param>
/// <param name="Points">A value a point, null but for nozzles; empty where colours tell nothing.</param>
/// <param name="RunTexts">The values of the runs in words.</param>
sealed record DrawnValues(ColourScale? RunScale, ColourScale? NozzleScale, double[] Runs, double?[] Points, string[] RunTexts)
{
    /// <summary>No values.</summary>
    public static DrawnValues None { get; } = new(null, null, [], [], []);

    /// <summary>The values of a flow that has converged.</summary>
    public static DrawnValues Of(Layout layout, FlowResult flow, DrawingColour colour, Shown shown) => colour switch
    {
        DrawingColour.Flow => Flows(layout, flow, shown),
        DrawingColour.Pressure => One("Pressure at the end of the run", QuantityKind.Pressure, shown,
            [.. flow.Runs.Select(run => (run.PressureOut - layout.AmbientPressure).Pascals)], ByPoint(layout, flow, nozzle => (nozzle.Pressure - layout.AmbientPressure).Pascals)),
        DrawingColour.Share => Shares(layout, flow),
        _ => None,
    };

    /// <summary>Step of a run, 0 to 6; null where colours tell nothing.</summary>
    public int? StepOfRun(int run) => RunScale?.Step(Runs[run]);

    /// <summary>Step of a nozzle, 0 to 6; null for any other point and where colours tell nothing.</summary>
    public int? StepOfPoint(int point) => NozzleScale is { } scale && Points[point] is { } value ? scale.Step(value) : null;

    /// <summary>Writes a mass flow as a volume where the agent is a liquid, whose density is one everywhere.</summary>
    public static Func<MassFlow, string> FlowText(Layout layout, FlowResult flow, Shown shown) =>
        PerMass(layout, flow) is { } volume ? mass => shown.Of(VolumeFlow.FromCubicMetersPerSecond(volume * mass.KilogramsPerSecond)) : shown.Of;

    static DrawnValues Flows(Layout layout, FlowResult flow, Shown shown)
    {
        var (perMass, kind) = PerMass(layout, flow) is { } volume ? (volume, QuantityKind.VolumeFlow) : (1, QuantityKind.MassFlow);
        return One("Flow", kind, shown, [.. flow.Runs.Select(run => perMass * run.MassFlow.KilogramsPerSecond)], ByPoint(layout, flow, nozzle => perMass * nozzle.MassFlow.KilogramsPerSecond));
    }

    static DrawnValues One(string title, QuantityKind kind, Shown shown, double[] runs, double?[] points)
    {
        var (factor, _, unit) = QuantityWriter.Scale(kind, shown.System);
        var scale = ColourScale.Of(title, runs.Concat(points.OfType<double>()), new(factor, unit));
        return new(scale, scale, runs, points, [.. runs.Select(value => shown.Of(value, kind))]);
    }

    static DrawnValues Shares(Layout layout, FlowResult flow)
    {
        var whole = flow.Supply!.MassFlow.KilogramsPerSecond;
        double[] runs = [.. flow.Runs.Select(run => whole > 0 ? run.MassFlow.KilogramsPerSecond / whole : 0)];
        var points = ByPoint(layout, flow, nozzle => nozzle.Deviation);
        return new(
            ColourScale.Of("Part of the whole flow", runs, new(100, "%", 1)), ColourScale.Of("Share over wanted share", points.OfType<double>(), new(100, "%", 1, IsSigned: true)),
            runs, points, [.. runs.Select(Shown.Percent)]);
    }

    static double?[] ByPoint(Layout layout, FlowResult flow, Func<NozzleFlow, double?> value)
    {
        var points = new double?[layout.Points.Length];
        foreach (var nozzle in flow.Nozzles) points[nozzle.Point] = value(nozzle);
        return points;
    }

    static double? PerMass(Layout layout, FlowResult flow) =>
        layout.Agent is LiquidAgent && flow.Supply is { } supply && supply.MassFlow.KilogramsPerSecond > 0 ? supply.VolumeFlow.CubicMetersPerSecond / supply.MassFlow.KilogramsPerSecond : null;
}
