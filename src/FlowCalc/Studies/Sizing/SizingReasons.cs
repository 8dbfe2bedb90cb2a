using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Studies.Sizing;

/// <summary>Why a run or a nozzle was exchanged: what the choice gives with that one piece left as it was.</summary>
public static class SizingReasons
{
    /// <summary>The reason for a run's tube.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="run">The run, by index.</param>
    /// <param name="units">The units to write in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>A sentence.</returns>
    public static string OfRun(SizingProblem problem, SizedChoice choice, int run, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(choice);
        var back = choice.Layout with { Runs = choice.Layout.Runs.SetItem(run, problem.Layout.Runs[run]) };
        return $"with {Wording.Tube(problem.Layout.Runs[run].Tube, units)} left in {Wording.Id(problem.Layout.Runs[run].Id)} {Without(problem, choice, back, units, cancellationToken)}";
    }

    /// <summary>The reason for a nozzle.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="choice">The choice.</param>
    /// <param name="point">The nozzle, by index of the point.</param>
    /// <param name="units">The units to write in.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>A sentence.</returns>
    public static string OfNozzle(SizingProblem problem, SizedChoice choice, int point, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(problem);
        ArgumentNullException.ThrowIfNull(choice);
        var back = choice.Layout with { Points = choice.Layout.Points.SetItem(point, problem.Layout.Points[point]) };
        return $"with {Wording.Id(problem.Layout.Points[point].Id)} left as it is {Without(problem, choice, back, units, cancellationToken)}";
    }

    static string Without(SizingProblem problem, SizedChoice choice, Layout back, UnitSystem units, CancellationToken cancellationToken)
    {
        var flow = SteadyFlow.Solve(back, cancellationToken);
        if (!flow.Report.Converged) return "there would be no flow";
        var wanted = WantedShares.Of(problem.Layout);
        var (before, after) = (Worst(problem, flow, wanted), Worst(problem, choice.Flow, wanted));
        var (less, more) = (Least(flow), Least(choice.Flow));
        return $"the worst nozzle would be {before} instead of {after}, the least pressure {Gauge(less)} instead of {Gauge(more)}, and the whole flow "
            + $"{Flow(flow)} instead of {Flow(choice.Flow)}";

        string Gauge(double absolute) => Wording.Of(absolute - problem.Layout.AmbientPressure.Pascals, Quantities.QuantityKind.Pressure, units);

        string Flow(FlowResult result) => Wording.Of(result.Supply!.MassFlow.KilogramsPerSecond, Quantities.QuantityKind.MassFlow, units);
    }

    static double Least(FlowResult flow) => flow.Nozzles.Min(nozzle => nozzle.Pressure.Pascals);

    static string Worst(SizingProblem problem, FlowResult flow, double[] wanted)
    {
        var (at, most) = (-1, 0.0);
        foreach (var nozzle in flow.Nozzles)
            if (wanted[nozzle.Point] > 0 && nozzle.Share / wanted[nozzle.Point] - 1 is var off && (at < 0 || Math.Abs(off) > Math.Abs(most))) (at, most) = (nozzle.Point, off);
        return at < 0 ? "none" : $"{Wording.Id(problem.Layout.Points[at].Id)} at {Wording.Signed(most)}";
    }
}
