using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>One instant of a liquid's flow, with a regulator where there is one.</summary>
internal static class LiquidFlow
{
    /// <summary>Solves a line.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="drive">What drives the flow.</param>
    /// <param name="path">The liquid.</param>
    /// <param name="turned">Puts a compiled line into an attitude; null for the layout as drawn.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The solution, null without convergence, and how the solve ended.</returns>
    public static (SolvedLiquid? Solved, SolveReport Report) Solve(
        Layout layout, in SupplyDrive drive, LiquidPath path, Func<LayoutNetwork, LayoutNetwork>? turned, CancellationToken cancellationToken)
    {
        var line = Compiled(layout, drive.Outlet, turned);
        var state = new SteadyState(line.Network);
        var throttled = 0.0;
        var report = SteadySolver.Solve(state, path, drive.Reservoir, cancellationToken);
        if (drive.SetPressure is { } set && report.Converged && path.Pressure(state.Potential[0]) > set)
        {
            // The open outlet would deliver more than the regulator lets through: it throttles, and holds its set pressure.
            throttled = drive.Reservoir - set;
            line = Compiled(layout, OutletGeometry.Free(drive.Outlet.Bore), turned);
            state = new SteadyState(line.Network);
            report = SteadySolver.Solve(state, path, set, cancellationToken);
        }
        return (report.Converged ? new(line, state, path, drive.Reservoir, throttled) : null, report);
    }

    /// <summary>A line in its attitude.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="outlet">The outlet of its supply.</param>
    /// <param name="turned">Puts a compiled line into an attitude; null for the layout as drawn.</param>
    public static LayoutNetwork Compiled(Layout layout, in RunGeometry outlet, Func<LayoutNetwork, LayoutNetwork>? turned)
    {
        var line = layout.Compile(outlet);
        return turned is null ? line : turned(line);
    }
}
