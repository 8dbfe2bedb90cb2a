using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>The momentum balance of a run of a gas or of an agent that boils, and how its drop of pressure is booked.</summary>
/// <param name="log">Where to; it holds the run's losses at the reference density.</param>
/// <param name="layout">The layout.</param>
/// <param name="solved">The solution.</param>
internal sealed class ExpandingBalance(StepLog log, Layout layout, SolvedExpanding solved)
{
    const string Start = "just inside the start", End = "just inside the end", Balance = "balance";

    /// <summary>Writes a run down.</summary>
    /// <param name="line">The line.</param>
    /// <param name="node">The run in solve order.</param>
    /// <param name="above">Absolute total pressure before it, Pa.</param>
    /// <param name="below">Absolute total pressure at its end, Pa.</param>
    /// <returns>Drops of pressure by kind, Pa.</returns>
    public IReadOnlyList<(LossKind Kind, double Drop)> Add(ExplainedLine line, int node, double above, double below)
    {
        var losses = log.Losses.ToArray();
        double taken = 0;
        foreach (var (_, drop) in losses) taken += drop;
        var state = solved.State;
        var (first, last) = (solved.Table.At(state.StartLog[node]).Density, solved.Table.At(state.EndLog[node]).Density);
        var flow = line.Flow[node];
        // Where nothing is lost and nothing changes there is no balance to tell.
        if (flow > 0 && (losses.Length > 0 || line.Network.Rise[node] != 0)) Momentum(line, node, flow, taken, losses);
        return Booked(losses, taken, above, below, line.Network.Rise[node], first, last);
    }

    void Momentum(ExplainedLine line, int node, double flow, double taken, (LossKind Kind, double Drop)[] losses)
    {
        var (table, state, network) = (solved.Table, solved.State, line.Network);
        var (start, end) = (table.At(state.StartLog[node]), table.At(state.EndLog[node]));
        var reference = table.ReferenceDensity;
        var count = node == 0 && layout.Supply is BottleSupply { Bottle.Count: var bottles } ? bottles : 1;
        var bore = Math.Sqrt(state.Area[node] / count / (Math.PI / 4));
        var flux = log.Add(GasEquations.MassFlux, Balance, flow / state.Area[node], flow, count, bore);
        var before = node == 0 ? state.ReservoirLog : state.Log[network.Parent[node]];
        log.Add(GasEquations.LosslessStep, Start, Math.Exp(state.StartLog[node]), Math.Exp(before), table.At(before).Work, start.Work, flux, start.Density);
        var lost = log.Sum(GasEquations.LossOfRun, "losses at the reference density", taken, losses.Select(loss => loss.Drop));
        var (rise, weight) = (network.Rise[node], 0.0);
        if (rise != 0)
            weight = log.Add(
                GasEquations.Weight, "rise", rise * HydrostaticRise.StandardGravity / reference * 0.5 * (start.Density * start.Density + end.Density * end.Density),
                HydrostaticRise.StandardGravity, rise, reference, start.Density, end.Density);
        log.Add(GasEquations.RunBalance, Balance, end.Potential, start.Potential, flux, reference, start.Density, end.Density, lost, weight);
        if (state.IsChoked[node]) log.Add(GasEquations.ChokedEnd, End, Math.Exp(state.EndLog[node]), flux, end.Density, end.DensitySlope);
        else log.Add(GasEquations.LosslessStep, End, Math.Exp(state.EndLog[node]), Math.Exp(state.Log[node]), table.At(state.Log[node]).Work, end.Work, flux, end.Density);
    }

    List<(LossKind Kind, double Drop)> Booked((LossKind Kind, double Drop)[] losses, double taken, double above, double below, double rise, double first, double last)
    {
        List<(LossKind Kind, double Drop)> booked = [];
        double height = 0;
        if (rise != 0)
        {
            height = log.Drop(LossKind.Rise, GasEquations.Rise, "rise", rise * HydrostaticRise.StandardGravity * 0.5 * (first + last), HydrostaticRise.StandardGravity, rise, first, last);
            booked.Add((LossKind.Rise, height));
        }
        if (!(taken > 0))
        {
            var kind = log.IsAtSupply ? LossKind.Outlet : LossKind.Tube;
            booked.Add((kind, log.Drop(kind, GasEquations.WholeDrop, Balance, above - below - height, above, below, height)));
            return booked;
        }
        foreach (var kind in losses.GroupBy(loss => loss.Kind, loss => loss.Drop))
        {
            var own = kind.Sum();
            var name = LossWords.Of(kind.Key);
            if (kind.Count() > 1) log.Sum(GasEquations.LossOfKind, name, own, kind);
            booked.Add((kind.Key, log.Drop(kind.Key, GasEquations.PartOfDrop, name, (above - below - height) * own / taken, above, below, height, own, taken)));
        }
        return booked;
    }
}
