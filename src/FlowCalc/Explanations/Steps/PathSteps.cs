using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>Sums along the way: the end of every run, the way to every nozzle, the balance of every point.</summary>
internal sealed class PathSteps
{
    readonly StepLog log;
    readonly ExplainedLine line;
    readonly double[][] drops;
    readonly List<int>[] leaving;
    readonly Dictionary<int, int> nozzles = [];

    /// <summary>Makes the sums of a line.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="line">The line.</param>
    public PathSteps(StepLog log, ExplainedLine line)
    {
        (this.log, this.line) = (log, line);
        var network = line.Network;
        (drops, leaving) = (new double[network.Count][], new List<int>[network.Count]);
        for (var j = 0; j < network.Count; j++) leaving[j] = [];
        for (var j = 1; j < network.Count; j++) leaving[network.Parent[j]].Add(j);
        for (var i = 0; i < network.Nozzles.Length; i++) nozzles[network.Nozzles[i]] = i;
    }

    /// <summary>Writes the end of a run down.</summary>
    /// <param name="node">The run in solve order.</param>
    /// <param name="counted">What it loses, by kind.</param>
    /// <param name="above">Gauge total pressure before it, Pa.</param>
    /// <param name="below">Gauge total pressure at its end, Pa.</param>
    public void End(int node, IReadOnlyList<(LossKind Kind, double Drop)> counted, double above, double below)
    {
        var (parent, name) = (line.Network.Parent[node], node == 0 ? "outlet" : "run");
        var sums = drops[node] = parent < 0 ? new double[Enum.GetValues<LossKind>().Length] : [.. drops[parent]];
        double whole = 0;
        foreach (var (kind, drop) in counted)
        {
            sums[(int)kind] += drop;
            whole += drop;
        }
        log.Sum(PathEquations.DropOfRun, name, whole, counted.Select(loss => loss.Drop));
        log.Add(PathEquations.EndPressure, name, below, above, whole);
    }

    /// <summary>Writes down what leaves the point at the end of a run, where more than one run does.</summary>
    /// <param name="node">The point in solve order.</param>
    public void Balance(int node)
    {
        if (leaving[node].Count < 2) return;
        log.At(ExplainedPlace.Point, line.Point(node).Id);
        log.Sum(PathEquations.MassBalance, "flow", line.Flow[node], leaving[node].Select(run => line.Flow[run]));
    }

    /// <summary>Writes down how a nozzle's effective area comes about.</summary>
    /// <param name="node">The point in solve order.</param>
    /// <param name="index">Its place among the network's nozzles.</param>
    /// <param name="area">Cd·A, m².</param>
    /// <returns>False where the point is no nozzle.</returns>
    public bool TryNozzle(int node, out int index, out double area)
    {
        area = 0;
        if (!nozzles.TryGetValue(node, out index)) return false;
        var nozzle = (Nozzle)line.Point(node);
        log.At(ExplainedPlace.Point, nozzle.Id);
        var network = line.Network.NozzleArea[index];
        area = nozzle.Orifice is { } holes
            ? log.Add(OutletEquations.AreaOfOrifice, "openings", network, holes.Count, holes.DischargeCoefficient, holes.Diameter.Meters)
            : log.Add(OutletEquations.AreaOfKFactor, "openings", network, nozzle.KFactor);
        return true;
    }

    /// <summary>Writes the whole way to a nozzle down.</summary>
    /// <param name="node">The point in solve order.</param>
    /// <param name="drop">Pressure of the reservoir less that at the nozzle, Pa.</param>
    public void Whole(int node, double drop) => log.Sum(PathEquations.DropOfPath, "from the supply", drop, drops[node]);
}
