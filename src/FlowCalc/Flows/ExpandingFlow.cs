using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>The steady flow of a layout whose agent is a gas or a liquefied gas: the start of the discharge, with every line full.</summary>
internal static class ExpandingFlow
{
    /// <summary>Solves a layout.</summary>
    /// <param name="layout">A checked layout of such an agent.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    public static FlowResult Solve(Layout layout, CancellationToken cancellationToken)
    {
        var (drive, stream) = ExpandingDrive.Of(layout);
        if (drive.Failure is { } failure) return FlowAnswer.Failed(new(false, 0, double.NaN, double.NaN, failure), layout);
        var line = layout.Compile(drive.Outlet);
        var (solved, report) = Follow(layout, line, drive, stream!, layout.NozzleModel, turned: null, cancellationToken);
        if (solved is null) return FlowAnswer.Failed(report, layout);
        var answer = ExpandingFlowAnswer.Of(layout, solved, report, drive.Reservoir, cancellationToken);
        return answer with { Band = Band(layout, line, drive, stream!, solved, answer, cancellationToken) };
    }

    // The other nozzle models, on the same line.
    static FlowBand? Band(
        Layout layout, LayoutNetwork line, in SupplyDrive drive, Func<IStream> stream, SolvedExpanding solved, FlowResult answer, CancellationToken cancellationToken)
    {
        if (layout.Agent.Kind == AgentKind.InertGas) return null;
        List<FlowResult> all = [answer];
        List<string> from = [];
        foreach (var model in Enum.GetValues<NozzleModel>())
        {
            if (model == layout.NozzleModel) continue;
            var (other, report) = Follow(layout, line, drive, stream, model, turned: null, cancellationToken);
            from.Add(other is null ? $"{FlowBand.Words(model)} (not solved)" : FlowBand.Words(model));
            if (other is not null) all.Add(ExpandingFlowAnswer.Of(layout, other, report, drive.Reservoir, cancellationToken));
        }
        return FlowBand.Of(all, from, TeeQuality.Of(layout, solved));
    }

    /// <summary>Solves a line.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="line">The layout compiled with the outlet that drives it.</param>
    /// <param name="drive">What drives the flow.</param>
    /// <param name="stream">Makes the stream that enters the line.</param>
    /// <param name="model">How far the agent boils in the nozzles.</param>
    /// <param name="turned">Puts a line compiled anew into an attitude; null for the layout as drawn.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The solution, null where there is none, and how the solve ended.</returns>
    public static (SolvedExpanding? Solved, SolveReport Report) Follow(
        Layout layout, LayoutNetwork line, in SupplyDrive drive, Func<IStream> stream, NozzleModel model, Func<LayoutNetwork, LayoutNetwork>? turned, CancellationToken cancellationToken)
    {
        var ambient = layout.AmbientPressure.Pascals;
        if (ExpansionTable.TryBuild(stream(), ExpansionTable.Top(drive.Reservoir, ambient), ambient, model) is not { } table)
            return (null, new(false, 0, double.NaN, double.NaN, "The agent has no state somewhere on its way to the nozzles within its data."));
        var state = new CompressibleState(line.Network, line.Areas(layout, drive.Outlet));
        var report = CompressibleSolver.Solve(state, new TablePath(table), drive.Reservoir, CompressibleSolver.Tight, cancellationToken);
        if (drive.SetPressure is { } set && report.Converged && Math.Exp(state.Log[0]) > set)
        {
            // The open outlet would deliver more than the regulator lets through: it throttles at constant enthalpy, and holds its set pressure.
            line = LiquidFlow.Compiled(layout, OutletGeometry.Free(drive.Outlet.Bore), turned);
            state = new CompressibleState(line.Network, line.Areas(layout, drive.Outlet));
            report = CompressibleSolver.Solve(state, new TablePath(table), set, CompressibleSolver.Tight, cancellationToken);
        }
        return (report.Converged ? new(line, state, table) { Stream = stream, Model = model, Reservoir = drive.Reservoir } : null, report);
    }
}

/// <summary>A solved line of an expanding agent.</summary>
/// <param name="Line">The line.</param>
/// <param name="State">The solution.</param>
/// <param name="Table">The agent's way.</param>
internal sealed record SolvedExpanding(LayoutNetwork Line, CompressibleState State, ExpansionTable Table)
{
    /// <summary>Makes the stream that enters the line.</summary>
    public required Func<IStream> Stream { get; init; }

    /// <summary>How far the agent boils in the nozzles.</summary>
    public required NozzleModel Model { get; init; }

    /// <summary>Absolute pressure in the bottle or at the held supply, Pa.</summary>
    public required double Reservoir { get; init; }
}
