using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>The steady flow of a liquid.</summary>
internal static class LiquidSteps
{
    /// <summary>Writes a flow down, from the supply to the nozzles.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="solved">The solution.</param>
    /// <param name="cancellationToken">Asked at every run.</param>
    public static void Add(StepLog log, Layout layout, SolvedLiquid solved, CancellationToken cancellationToken)
    {
        var (compiled, state, path) = (solved.Line, solved.State, solved.Path);
        var isThrottled = solved.Throttled > 0;
        var line = new ExplainedLine(layout, compiled, state.Flow, path.ReferenceDensity, _ => path.Viscosity, isThrottled);
        var (runs, ways) = (new RunSteps(log, line), new PathSteps(log, line));
        var reservoir = path.Potential(solved.Reservoir);
        for (var j = 0; j < line.Network.Count; j++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (j == 0)
            {
                log.At(ExplainedPlace.Supply, line.Point(0).Id);
                if (isThrottled) log.Loss(LossKind.Outlet, OutletEquations.Throttled, "regulator", solved.Throttled, reservoir, reservoir - solved.Throttled);
                OutletSteps.Add(log, line);
            }
            else
            {
                log.At(ExplainedPlace.Run, line.Run(j).Id);
                runs.Add(j);
            }
            runs.Rise(j);
            ways.End(j, log.Losses, j == 0 ? reservoir : state.Potential[line.Network.Parent[j]], state.Potential[j]);
            ways.Balance(j);
            if (ways.TryNozzle(j, out var nozzle, out var area)) Nozzle(log, line, state.Potential[j], area, state.IsClosed[nozzle]);
            else continue;
            ways.Whole(j, reservoir - state.Potential[j]);
        }
    }

    static void Nozzle(StepLog log, ExplainedLine line, double pressure, double area, bool isClosed)
    {
        if (isClosed) log.Add(OutletEquations.DryNozzle, "flow", 0, pressure);
        else log.Add(OutletEquations.NozzleFlow, "flow", line.Density * Orifice.VolumeFlow(pressure, line.Density, area).VolumeFlow, area, line.Density, pressure);
    }
}
