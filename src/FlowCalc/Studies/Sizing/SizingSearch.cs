using FlowCalc.Agents;
using FlowCalc.Flows;
using UnitsNet;

namespace FlowCalc.Studies.Sizing;

/// <summary>One search: something good first, then the best with a proof as far as the work reaches, then the better of equals.</summary>
internal sealed class SizingSearch
{
    // Part of the work in which to look for something good, and at most so many solves.
    const int PartForStarts = 5;
    const int MostForStarts = 12_000;

    // Part of the work that may be spent on the better of equals after the proof.
    const int PartForEquals = 20;
    const int MostForEquals = 2_000;

    // Two groups at a time take the square of the choices.
    const int MostForPairs = 90;

    readonly CancellationToken cancellation;
    readonly int work;

    SizingSearch(SizingProblem problem, TaskScheduler scheduler, CancellationToken cancellation)
    {
        (work, this.cancellation) = (problem.Work, cancellation);
        var drive = problem.Layout.Agent is LiquidAgent liquid ? SupplyDrive.Of(problem.Layout, liquid) : ExpandingDrive.Of(problem.Layout).Drive;
        Failure = drive.Failure;
        Model = ModelBuilder.Of(problem, double.IsFinite(drive.Reservoir) ? Pressure.FromPascals(drive.Reservoir) : null);
        Flows = new(Model, cancellation);
        Times = new(Model, Flows, scheduler, cancellation);
        Finds = new(Model, Flows, Times, work);
    }

    /// <summary>Why nothing flows whatever is chosen; null where something does.</summary>
    public string? Failure { get; }

    /// <summary>The choices.</summary>
    public SizingModel Model { get; }

    /// <summary>The flows solved.</summary>
    public CandidateFlow Flows { get; }

    /// <summary>The discharges followed.</summary>
    public WishTimes Times { get; }

    /// <summary>What was found.</summary>
    public Finds Finds { get; }

    /// <summary>The choice nearest to the layout as it is.</summary>
    public byte[] Start => [.. Model.Present.Select(choice => (byte)Math.Max(choice, 0))];

    /// <summary>What nothing is below, in the objective's measure.</summary>
    public double Bound { get; private set; }

    /// <summary>Whether the best found is proven to be the best, or that there is none.</summary>
    public bool IsProven { get; private set; }

    /// <summary>Makes a search.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="scheduler">Where cases of a discharge run beside the caller's thread.</param>
    /// <param name="cancellation">Stops it.</param>
    public static SizingSearch Of(SizingProblem problem, TaskScheduler scheduler, CancellationToken cancellation) => new(problem, scheduler, cancellation);

    /// <summary>Searches.</summary>
    public void Run()
    {
        var local = new LocalSearch(Model, Finds, Model.Layout.AmbientPressure.Pascals);
        var pairs = Model.Count.Sum() <= MostForPairs;
        if (Failure is not null) return;
        // Without bounds on the flow there is nothing but to try.
        var enough = Flows.WorkOfOne > 1 ? work / 4 * 3 : Math.Min(work / PartForStarts, MostForStarts);
        Calibrate();
        _ = local.Descend(Start, pairs, enough);
        foreach (var part in (double[])[0, 0.5, 1])
            _ = local.Descend([.. Model.Count.Select(count => (byte)Math.Round(part * (count - 1)))], pairs: false, enough);

        RunExact();
        if (Finds.Best is { } best) _ = local.Descend(best.Choices, pairs, Flows.Work + Math.Min(work / PartForEquals, MostForEquals));
    }

    /// <summary>The part of the search that proves, by itself.</summary>
    public void RunExact()
    {
        var table = ChoiceTable.Of(Model);
        (Bound, IsProven) = table is null ? new EveryChoice(Model, Finds, work).Run() : Exact(table);
        // What was left aside without its discharge may be better than anything that was followed.
        if (double.IsPositiveInfinity(Finds.Untimed)) return;
        (Bound, IsProven) = Model.Objective switch
        {
            SizingObjective.BestBalance => (0, false),
            SizingObjective.ShortestTime => (table is null ? 0 : Bound, false),
            _ => (Math.Min(Bound, Finds.Untimed), IsProven && Finds.Best is not null && Finds.Untimed > Finds.Limit),
        };
    }

    (double Bound, bool IsProven) Exact(ChoiceTable table) => Model.Objective switch
    {
        SizingObjective.BestBalance => new BalanceLadder(Model, table, Finds, cancellation).Run(),
        SizingObjective.ShortestTime => new TimeSearch(Model, table, Finds, cancellation).Run(),
        _ => new SumSearch(Model, table, Finds, cancellation).Run(),
    };

    // One discharge tells how the time goes by the flow.
    void Calibrate()
    {
        if (!Model.Wish.HasTime && Model.Objective != SizingObjective.ShortestTime) return;
        var trial = Flows.Of(Start);
        if (trial.IsSolved) _ = Times.Of(trial);
    }
}
