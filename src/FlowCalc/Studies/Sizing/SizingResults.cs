using System.Collections.Immutable;
using FlowCalc.Flows;

namespace FlowCalc.Studies.Sizing;

/// <summary>Writes what a search found with layouts and flows.</summary>
internal static class SizingResults
{
    /// <summary>The result of a search that was run.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="search">The search.</param>
    /// <param name="scheduler">Where cases of a discharge run beside the caller's thread.</param>
    /// <param name="cancellation">Asked throughout.</param>
    public static SizingResult Of(SizingProblem problem, SizingSearch search, TaskScheduler scheduler, CancellationToken cancellation)
    {
        var model = search.Model;
        return new()
        {
            Failure = search.Failure,
            IsProven = search.IsProven,
            Bound = search.Bound,
            Before = Before(search, cancellation),
            Best = search.Finds.Best is { } best ? Of(search, best, isWhole: true, cancellation) : null,
            Second = search.Finds.Second is { } second ? Of(search, second, isWhole: false, cancellation) : null,
            Relaxations = search.Finds.Best is null && search.Failure is null ? Relaxations.Of(problem, scheduler, cancellation) : [],
            LeftOut = model.LeftOut,
            Solves = search.Flows.Solves,
            Discharges = search.Times.Discharges,
            Choices = model.Choices,
        };
    }

    /// <summary>A choice with its layout and flow.</summary>
    /// <param name="search">The search that solved it.</param>
    /// <param name="trial">The choice.</param>
    /// <param name="isWhole">Whether its discharge is to be followed in every case, where time matters.</param>
    /// <param name="cancellation">Asked throughout.</param>
    public static SizedChoice Of(SizingSearch search, Trial trial, bool isWhole, CancellationToken cancellation)
    {
        var (model, layout) = (search.Model, search.Model.Apply(trial.Choices));
        var flow = SteadyFlow.Solve(layout, cancellation);
        var needsTime = model.Wish.HasTime || model.Objective == SizingObjective.ShortestTime;
        var times = trial.Times ?? (needsTime && isWhole && trial.IsSolved ? search.Times.Of(trial) : null);
        var timed = trial with { Times = times };
        return new(
            layout, flow, Deviations(model, flow), search.Finds.Value(timed), trial.Worst, times,
            [.. Enumerable.Range(0, model.Runs.Length).Where(run => model.IsChanged(run, trial.Choices))],
            [.. Enumerable.Range(0, model.Nozzles.Length).Where(point => model.IsNozzleChanged(point, trial.Choices))])
        {
            Terms = model.Objective is SizingObjective.BestBalance or SizingObjective.ShortestTime ? [] : model.Terms(trial.Choices),
        };
    }

    // The layout as it is need not be one of the choices: a group may hold more than one size now.
    static SizedChoice Before(SizingSearch search, CancellationToken cancellation)
    {
        var model = search.Model;
        var isChoice = model.Present.All(choice => choice >= 0);
        if (isChoice) return Of(search, search.Flows.Of(search.Start), isWhole: true, cancellation);
        var flow = SteadyFlow.Solve(model.Layout, cancellation);
        var deviations = Deviations(model, flow);
        var worst = flow.Report.Converged ? deviations.Max(deviation => Math.Abs(deviation ?? 0)) : double.PositiveInfinity;
        double? value = model.Objective switch
        {
            SizingObjective.FewestChanges => 0,
            SizingObjective.BestBalance => worst,
            _ => null,
        };
        return new(model.Layout, flow, deviations, value, worst, null, [], []);
    }

    static ImmutableArray<double?> Deviations(SizingModel model, FlowResult flow) =>
        [.. flow.Nozzles.Select(nozzle => model.Wanted[nozzle.Point] is > 0 and var wanted ? nozzle.Share / wanted - 1 : (double?)null)];
}
