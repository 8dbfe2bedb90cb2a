using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>The steady flow of a layout: one instant, at the pressure of its supply.</summary>
public static class SteadyFlow
{
    /// <summary>Solves a layout.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The flow; look at <see cref="SolveReport.Converged"/> of its report first.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static FlowResult Solve(Layout layout, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Agent is not LiquidAgent agent) return ExpandingFlow.Solve(layout, cancellationToken);
        var temperature = layout.Temperature.Kelvins;
        var (density, viscosity) = (agent.Density(temperature), agent.Viscosity(temperature));
        var path = new LiquidPath(density, viscosity, layout.AmbientPressure.Pascals);
        var drive = SupplyDrive.Of(layout, agent);
        if (drive.Failure is { } failure) return FlowAnswer.Failed(new(false, 0, double.NaN, double.NaN, failure), layout);

        var (compiled, state, report, throttled) = LiquidLine.Solve(layout, path, drive, cancellationToken);
        return report.Converged
            ? FlowAnswer.Of(layout, compiled, state, report, path, drive.Reservoir, throttled, cancellationToken)
            : FlowAnswer.Failed(report, layout);
    }
}
