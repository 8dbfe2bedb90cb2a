using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>What came of a search for sizes.</summary>
public sealed record SizingResult
{
    /// <summary>Whether a choice that meets the wish was found.</summary>
    public bool IsPossible => Best is not null;

    /// <summary>Whether the best found is proven to be the best in the objective's measure; where none was found, whether it is proven that there is none.</summary>
    public required bool IsProven { get; init; }

    /// <summary>What no choice that meets the wish is below, in the objective's measure: pieces, cost, kg, a part or s; infinite where there is proven to be none.</summary>
    public required double Bound { get; init; }

    /// <summary>The layout as it is in the objective's measure; null where that cannot be said.</summary>
    public required SizedChoice Before { get; init; }

    /// <summary>The best choice found; null for none.</summary>
    public required SizedChoice? Best { get; init; }

    /// <summary>The next best choice found; null for none.</summary>
    public required SizedChoice? Second { get; init; }

    /// <summary>Where nothing meets the wish: what comes of it with each requirement left out in turn.</summary>
    public required ImmutableArray<SizingRelaxation> Relaxations { get; init; }

    /// <summary>Why tubes and nozzles of the stock are no choice somewhere.</summary>
    public required ImmutableArray<string> LeftOut { get; init; }

    /// <summary>Choices solved.</summary>
    public required int Solves { get; init; }

    /// <summary>Discharges followed.</summary>
    public required int Discharges { get; init; }

    /// <summary>Choices that there are in all.</summary>
    public required double Choices { get; init; }
}

/// <summary>A choice as a layout, with its flow.</summary>
/// <param name="Layout">The layout with it.</param>
/// <param name="Flow">Its steady flow; wanted shares there are the layout's own, those of the choice stand in <paramref name="Deviations"/>.</param>
/// <param name="Deviations">Deviation of each nozzle of the flow from the share that the document as it was wants of it; null where it wants none.</param>
/// <param name="Value">The objective's measure; null where it cannot be said.</param>
/// <param name="Worst">Largest deviation without sign.</param>
/// <param name="Times">Shortest and longest time of the required part over the cases, s, infinite for one that never gets there; null where no discharge was followed.</param>
/// <param name="Runs">Runs whose tube changes, by index.</param>
/// <param name="Nozzles">Nozzles that change, by index of the point.</param>
public sealed record SizedChoice(
    Layout Layout, FlowResult Flow, ImmutableArray<double?> Deviations, double? Value, double Worst, (double Least, double Most)? Times, ImmutableArray<int> Runs, ImmutableArray<int> Nozzles);

/// <summary>What comes of a wish with one requirement left out.</summary>
/// <param name="Requirement">Which.</param>
/// <param name="Choice">The choice that meets the others and comes nearest to it; null where none was found.</param>
/// <param name="Best">How far it comes: a part for the deviation, absolute Pa for the pressure, s for the time; NaN where none was found.</param>
public sealed record SizingRelaxation(SizingRequirement Requirement, SizedChoice? Choice, double Best);

/// <summary>The parts of a wish.</summary>
public enum SizingRequirement
{
    /// <summary>The deviation.</summary>
    Deviation,

    /// <summary>The time.</summary>
    Within,

    /// <summary>The least pressure.</summary>
    LeastPressure,
}
