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

        var (solved, report) = LiquidFlow.Solve(layout, drive, path, turned: null, cancellationToken);
        return solved is null ? FlowAnswer.Failed(report, layout) : FlowAnswer.Of(layout, solved, report, cancellationToken);
    }
}
