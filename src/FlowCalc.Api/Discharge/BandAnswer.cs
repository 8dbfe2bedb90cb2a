using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Discharge;

/// <summary>How far the uncertain choices of the model move the discharge, all one way and all the other.</summary>
/// <param name="Time95">The time to 95 % of the contents.</param>
/// <param name="Requirement">The time of the requirement; null where nothing is required.</param>
/// <param name="Shares">The share of each nozzle, in the document's order.</param>
/// <param name="From">What was varied.</param>
public sealed record BandAnswer(TimeBandAnswer Time95, TimeBandAnswer? Requirement, ImmutableArray<ShareBandAnswer> Shares, ImmutableArray<string> From);

/// <summary>A band of times.</summary>
/// <param name="Low">Shortest; null where that never happens.</param>
/// <param name="High">Longest; null where that never happens.</param>
public sealed record TimeBandAnswer(Quantity? Low, Quantity? High);

/// <summary>A band of a nozzle's shares.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="Low">Least, 0 to 1.</param>
/// <param name="High">Greatest, 0 to 1.</param>
public readonly record struct ShareBandAnswer(string Id, double Low, double High);
