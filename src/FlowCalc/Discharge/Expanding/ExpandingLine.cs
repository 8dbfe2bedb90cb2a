using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>The line of an expanding agent at an instant: flows, what it holds, and how long the agent takes to come through.</summary>
internal sealed class ExpandingLine
{
    // Newton squares the error.
    const double Settled = 1e-3;

    readonly ExpandingProblem problem;
    readonly CompressibleState state;
    readonly double ownConstant;

    /// <summary>Makes the line of a problem.</summary>
    /// <param name="problem">The problem.</param>
    public ExpandingLine(ExpandingProblem problem)
    {
        this.problem = problem;
        state = new CompressibleState(problem.Network.WithOwnConstants(), problem.Area);
        ownConstant = state.Network.Constant[0];
    }

    /// <summary>Flow into the line, kg/s.</summary>
    public double Flow => state.Steady.Flow[0];

    /// <summary>Solves for a pressure before the line.</summary>
    /// <param name="table">The stream.</param>
    /// <param name="drive">Absolute pressure, Pa.</param>
    /// <param name="time">Time since the valve began to open, s.</param>
    /// <param name="cancellation">Asked at every step.</param>
    /// <returns>Why there is no answer; null where there is one.</returns>
    public string? Solve(ExpansionTable table, double drive, double time, CancellationToken cancellation)
    {
        state.Network.Constant[0] = ownConstant + OpeningResistance(time);
        var report = CompressibleSolver.Solve(state, new TablePath(table), drive, Settled, cancellation);
        return report.Failure;
    }

    /// <summary>Flow out of a nozzle, kg/s.</summary>
    /// <param name="nozzle">Which, in solve order.</param>
    public double NozzleFlow(int nozzle) => Math.Max(state.Steady.Flow[problem.Network.Nozzles[nozzle]], 0);

    /// <summary>Total pressure before a nozzle, Pa absolute.</summary>
    /// <param name="nozzle">Which, in solve order.</param>
    public double NozzlePressure(int nozzle) => Math.Exp(state.Log[problem.Network.Nozzles[nozzle]]);

    /// <summary>Flow of a run, kg/s.</summary>
    /// <param name="run">Which.</param>
    public double RunFlow(int run) => state.Steady.Flow[run];

    /// <summary>Mass that a run holds while the flow is steady, kg.</summary>
    /// <param name="table">The stream.</param>
    /// <param name="run">Which.</param>
    public double Held(ExpansionTable table, int run) =>
        problem.Volume[run] == 0 ? 0 : problem.Volume[run] * 0.5 * (table.At(state.StartLog[run]).Density + table.At(state.EndLog[run]).Density);

    /// <summary>Speed of sound in the middle of each run, m/s: √(p/(ρ·d ln ρ/d ln p)).</summary>
    /// <param name="table">The stream.</param>
    public double[] SoundSpeed(ExpansionTable table)
    {
        var speeds = new double[problem.Network.Count];
        for (var j = 0; j < speeds.Length; j++)
        {
            var log = 0.5 * (state.StartLog[j] + state.EndLog[j]);
            var at = table.At(log);
            speeds[j] = Math.Sqrt(Math.Exp(log) / (at.Density * at.DensitySlope));
        }
        return speeds;
    }

    /// <summary>Mass that the whole line holds while the flow is steady, kg.</summary>
    /// <param name="table">The stream.</param>
    public double Held(ExpansionTable table)
    {
        double sum = 0;
        for (var j = 0; j < problem.Network.Count; j++) sum += Held(table, j);
        return sum;
    }

    /// <summary>Time from the bottle to each nozzle as a plug at the present flows, s; infinite where nothing flows.</summary>
    /// <param name="table">The stream.</param>
    public double[] Passage(ExpansionTable table)
    {
        var network = problem.Network;
        var times = new double[network.Count];
        for (var j = 0; j < network.Count; j++)
        {
            var held = Held(table, j);
            times[j] = (network.Parent[j] < 0 ? 0 : times[network.Parent[j]]) + (held == 0 ? 0 : RunFlow(j) > 0 ? held / RunFlow(j) : double.PositiveInfinity);
        }
        return Array.ConvertAll(network.Nozzles, point => times[point]);
    }

    double OpeningResistance(double time)
    {
        if (time >= problem.OpeningTime) return 0;
        var part = Math.Max(time / problem.OpeningTime, 1e-3);
        return problem.ValveResistance * (1 / (part * part) - 1);
    }
}
