using System.Collections.Immutable;

namespace FlowCalc.Studies.Sizing;

/// <summary>What came of a search for sizes.</summary>
public sealed record SizingResult
{
    /// <summary>Why nothing flows whatever is chosen; null where something does.</summary>
    public required string? Failure { get; init; }

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

    /// <summary>How far the best found may be from the best there is, in the objective's measure; null without a choice or its measure.</summary>
    public double? Gap => Best is { Value: { } value } ? Math.Max(0, value - Bound) : null;

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
