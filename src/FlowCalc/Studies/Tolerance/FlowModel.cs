using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;

namespace FlowCalc.Studies.Tolerance;

/// <summary>The steady flow of every sample.</summary>
/// <param name="layout">The design.</param>
internal sealed class FlowModel(Layout layout) : StudyModel(layout)
{
    readonly ImmutableArray<Limit> limits = DefaultLimits.For(layout.Limits, LimitUse.Flow);

    /// <inheritdoc/>
    public override ImmutableArray<(double Temperature, Attitude? Attitude)> Cases { get; } = [(layout.Temperature.Kelvins, null)];

    /// <inheritdoc/>
    public override ImmutableArray<Figure> CaseFigures { get; } = [Figure.MassFlow, Figure.LowestDeviation, Figure.HighestDeviation];

    /// <inheritdoc/>
    public override ImmutableArray<Figure> MainFigures { get; } = [Figure.LowestDeviation, Figure.MassFlow];

    /// <inheritdoc/>
    public override ImmutableArray<Figure> NozzleFigures { get; } = [Figure.Share, Figure.Deviation, Figure.MassFlow, Figure.Pressure];

    /// <inheritdoc/>
    public override void Answer(Layout sample, double warmer, Span<double> row, Span<string?> failures, FindingTally tally, CancellationToken cancellationToken)
    {
        var flow = SteadyFlow.Solve(sample, cancellationToken);
        if (!flow.Report.Converged)
        {
            row.Fill(double.NaN);
            failures[0] = flow.Report.Failure;
            return;
        }
        var ambient = sample.AmbientPressure.Pascals;
        var next = 0;
        row[next++] = flow.Supply!.MassFlow.KilogramsPerSecond;
        row[next++] = Extreme(flow.Nozzles.Select(nozzle => nozzle.Deviation), greatest: false);
        row[next++] = Extreme(flow.Nozzles.Select(nozzle => nozzle.Deviation), greatest: true);
        foreach (var nozzle in flow.Nozzles)
        {
            row[next++] = nozzle.Share;
            row[next++] = nozzle.Deviation ?? double.NaN;
            row[next++] = nozzle.MassFlow.KilogramsPerSecond;
            row[next++] = nozzle.Pressure.Pascals - ambient;
        }
        foreach (var zone in flow.Zones)
        {
            row[next++] = zone.Share;
            row[next++] = zone.Deviation ?? double.NaN;
        }
        FlowFindings.Tally(sample, flow, limits, tally, cancellationToken);
    }
}
