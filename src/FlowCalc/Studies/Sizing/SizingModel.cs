using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>The choices of a layout as plain numbers: groups with their choices, and for each run and nozzle what a choice makes of it and adds to the objective.</summary>
internal sealed class SizingModel
{
    /// <summary>The layout as it is.</summary>
    public required Layout Layout { get; init; }

    /// <summary>The wish.</summary>
    public required SizingWish Wish { get; init; }

    /// <summary>The objective.</summary>
    public required SizingObjective Objective { get; init; }

    /// <summary>Number of choices of each group, 1 or more.</summary>
    public required int[] Count { get; init; }

    /// <summary>All combinations of choices.</summary>
    public double Choices => Count.Aggregate(1.0, (product, count) => product * count);

    /// <summary>The choice that leaves a group as it is; −1 where its members differ now, or where the objective cannot count what is there.</summary>
    public required int[] Present { get; init; }

    /// <summary>Group of each run; −1 for one that is not free.</summary>
    public required int[] RunGroup { get; init; }

    /// <summary>Group of each point that is a free nozzle; −1 for others.</summary>
    public required int[] NozzleGroup { get; init; }

    /// <summary>Each run in each choice of its group; one entry where it is not free.</summary>
    public required Run[][] Runs { get; init; }

    /// <summary>Each nozzle in each choice of its group; one entry where it is not free, none for other points.</summary>
    public required Nozzle[][] Nozzles { get; init; }

    /// <summary>What each choice of a run adds to the objective.</summary>
    public required double[][] RunSum { get; init; }

    /// <summary>What a metre of each choice of a run's tube costs or weighs, where the objective counts that; null where it does not. Empty for a run that is not free.</summary>
    public required double?[][] PerMetre { get; init; }

    /// <summary>What each choice of a nozzle adds to the objective.</summary>
    public required double[][] NozzleSum { get; init; }

    /// <summary>Wanted share of each point as the document has it now; 0 where nothing is wanted. They stay when a nozzle changes.</summary>
    public required double[] Wanted { get; init; }

    /// <summary>Why a tube or nozzle of the stock is no choice somewhere.</summary>
    public required ImmutableArray<string> LeftOut { get; init; }

    /// <summary>Wanted shares of a layout.</summary>
    /// <param name="layout">The layout.</param>
    public static double[] WantedOf(Layout layout) => WantedShares.Of(layout);

    /// <summary>The run in a choice.</summary>
    public Run RunOf(int run, ReadOnlySpan<byte> choices) => Runs[run][RunGroup[run] is >= 0 and var group ? choices[group] : 0];

    /// <summary>The nozzle in a choice.</summary>
    public Nozzle NozzleOf(int point, ReadOnlySpan<byte> choices) => Nozzles[point][NozzleGroup[point] is >= 0 and var group ? choices[group] : 0];

    /// <summary>The layout with a choice for every group.</summary>
    public Layout Apply(ReadOnlySpan<byte> choices)
    {
        var runs = new Run[Runs.Length];
        for (var run = 0; run < runs.Length; run++) runs[run] = RunOf(run, choices);
        var points = Layout.Points.AsSpan().ToArray();
        for (var point = 0; point < points.Length; point++)
            if (Nozzles[point].Length > 0) points[point] = NozzleOf(point, choices);
        return Layout with { Runs = ImmutableCollectionsMarshal.AsImmutableArray(runs), Points = ImmutableCollectionsMarshal.AsImmutableArray(points) };
    }

    /// <summary>What a choice adds up to, in the order of runs and points, so that the same choice has the same bits.</summary>
    public double Sum(ReadOnlySpan<byte> choices)
    {
        var sum = 0.0;
        for (var run = 0; run < Runs.Length; run++)
            if (RunGroup[run] is >= 0 and var group) sum += RunSum[run][choices[group]];
        for (var point = 0; point < Nozzles.Length; point++)
            if (NozzleGroup[point] is >= 0 and var group) sum += NozzleSum[point][choices[group]];
        return sum;
    }

    /// <summary>What that sum is of.</summary>
    public ImmutableArray<SizedTerm> Terms(ReadOnlySpan<byte> choices)
    {
        var terms = ImmutableArray.CreateBuilder<SizedTerm>();
        for (var run = 0; run < Runs.Length; run++)
            if (RunGroup[run] is >= 0 and var group) terms.Add(new(true, run, PerMetre[run][choices[group]], RunSum[run][choices[group]]));
        for (var point = 0; point < Nozzles.Length; point++)
            if (NozzleGroup[point] is >= 0 and var group) terms.Add(new(false, point, null, NozzleSum[point][choices[group]]));
        return terms.DrainToImmutable();
    }

    /// <summary>Runs and nozzles that a choice exchanges.</summary>
    public int Changes(ReadOnlySpan<byte> choices)
    {
        var changes = 0;
        for (var run = 0; run < Runs.Length; run++)
            if (IsChanged(run, choices)) changes++;
        for (var point = 0; point < Nozzles.Length; point++)
            if (IsNozzleChanged(point, choices)) changes++;
        return changes;
    }

    /// <summary>Whether a choice exchanges a run's tube.</summary>
    public bool IsChanged(int run, ReadOnlySpan<byte> choices) => !SameSize.Of(RunOf(run, choices).Tube, Layout.Runs[run].Tube);

    /// <summary>Whether a choice exchanges a nozzle.</summary>
    public bool IsNozzleChanged(int point, ReadOnlySpan<byte> choices) =>
        NozzleGroup[point] >= 0 && !SameSize.Of(NozzleOf(point, choices), (Nozzle)Layout.Points[point]);
}
