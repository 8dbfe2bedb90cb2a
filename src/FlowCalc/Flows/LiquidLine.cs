using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>A line that was solved for a liquid.</summary>
/// <param name="Compiled">The line.</param>
/// <param name="State">The solution.</param>
/// <param name="Report">How the solve ended.</param>
/// <param name="Throttled">Pressure that a regulator takes, Pa; then the line has no other outlet.</param>
internal readonly record struct LiquidLine(LayoutNetwork Compiled, SteadyState State, SolveReport Report, double Throttled)
{
    /// <summary>Solves a layout's line.</summary>
    /// <param name="layout">A checked layout of a liquid.</param>
    /// <param name="path">The liquid.</param>
    /// <param name="drive">What drives it; without a failure.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    public static LiquidLine Solve(Layout layout, LiquidPath path, in SupplyDrive drive, CancellationToken cancellationToken)
    {
        var compiled = layout.Compile(drive.Outlet);
        var state = new SteadyState(compiled.Network);
        var report = SteadySolver.Solve(state, path, drive.Reservoir, cancellationToken);
        if (drive.SetPressure is not { } set || !report.Converged || !(path.Pressure(state.Potential[0]) > set)) return new(compiled, state, report, 0);

        // The open outlet would deliver more than the regulator lets through: it throttles, and holds its set pressure.
        compiled = layout.Compile(OutletGeometry.Free(drive.Outlet.Bore));
        state = new SteadyState(compiled.Network);
        return new(compiled, state, SteadySolver.Solve(state, path, set, cancellationToken), drive.Reservoir - set);
    }
}
