using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

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
    Layout Layout, FlowResult Flow, ImmutableArray<double?> Deviations, double? Value, double Worst, (double Least, double Most)? Times, ImmutableArray<int> Runs, ImmutableArray<int> Nozzles)
{
    /// <summary>What each free run and nozzle adds to an objective that is a sum, in the order of runs and points; empty where it is none, or where the layout is no choice of the stock.</summary>
    public ImmutableArray<SizedTerm> Terms { get; init; } = [];
}
