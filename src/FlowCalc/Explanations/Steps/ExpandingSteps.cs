using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>The steady flow of a gas or of an agent that boils.</summary>
/// <param name="log">Where to.</param>
/// <param name="layout">The layout.</param>
/// <param name="solved">The solution.</param>
internal sealed class ExpandingSteps(StepLog log, Layout layout, SolvedExpanding solved)
{
    // Of the table of states, from the reservoir's pressure to the surroundings'.
    const int States = 25;

    readonly ExpandingBalance balance = new(log, layout, solved);

    /// <summary>Writes a flow down, from the supply to the nozzles.</summary>
    /// <param name="cancellationToken">Asked at every run.</param>
    public void Add(CancellationToken cancellationToken)
    {
        var (compiled, state, table) = solved;
        var (network, ambient) = (compiled.Network, layout.AmbientPressure.Pascals);
        // The set pressure of a regulator stands before the network's first run, which then is no outlet.
        var isThrottled = state.ReservoirLog < Math.Log(solved.Reservoir);
        var line = new ExplainedLine(layout, compiled, state.Steady.Flow, table.ReferenceDensity, run => state.Viscosity[run], isThrottled);
        var (runs, ways, nozzles) = (new RunSteps(log, line), new PathSteps(log, line), new ExpandingNozzles(log, solved, ambient));
        log.IsCounting = false;
        for (var j = 0; j < network.Count; j++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            if (j == 0)
            {
                log.At(ExplainedPlace.Supply, line.Point(0).Id);
                OutletSteps.Add(log, line);
            }
            else
            {
                log.At(ExplainedPlace.Run, line.Run(j).Id);
                runs.Add(j);
            }
            var above = j == 0 ? solved.Reservoir : Math.Exp(state.Log[network.Parent[j]]);
            var below = Math.Exp(state.Log[j]);
            ways.End(j, balance.Add(line, j, above, below), above - ambient, below - ambient);
            ways.Balance(j);
            if (!ways.TryNozzle(j, out var nozzle, out var area)) continue;
            nozzles.Add(state.Log[j], area, state.Steady.IsClosed[nozzle]);
            ways.Whole(j, solved.Reservoir - below);
        }
        log.IsCounting = true;
    }

    /// <summary>States along the way.</summary>
    public IEnumerable<PathState> Table()
    {
        var (table, top) = (solved.Table, Math.Log(solved.Reservoir));
        for (var i = 0; i < States; i++)
        {
            var log = top + (table.LogAmbient - top) * i / (States - 1);
            TablePoint at = table.At(log);
            yield return new(Math.Exp(log), at.Density, at.Potential, at.Work, table.Viscosity(log), table.Nozzle(log).Flux);
        }
    }
}
