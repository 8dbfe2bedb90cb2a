using System.Collections.Immutable;
using FlowCalc.Api.Flow;

namespace FlowCalc.Api.Discharge;

/// <summary>How far the uncertain choices of the model move the discharge, all one way and all the other.</summary>
/// <param name="Time95">The time to 95 % of the contents.</param>
/// <param name="Requirement">The time of the requirement; null where nothing is required.</param>
/// <param name="Shares">The share of each nozzle, in the document's order.</param>
/// <param name="From">What was varied.</param>
public sealed record BandAnswer(TimeBandAnswer Time95, TimeBandAnswer? Requirement, ImmutableArray<ShareBandAnswer> Shares, ImmutableArray<string> From);
