using System.Collections.Immutable;
using FlowCalc.Flows;

namespace FlowCalc.Discharge;

/// <summary>How far the uncertain choices of the model move a discharge.</summary>
/// <param name="Time95">The time to 95 % of the contents; an end is null where that never happens.</param>
/// <param name="RequiredTime">The time of the requirement; an end is null where that never happens; null where nothing is required.</param>
/// <param name="Shares">Least and greatest share of each nozzle, in the case's order.</param>
/// <param name="From">What was varied, in words.</param>
public sealed record DischargeBand(TimeBand Time95, TimeBand? RequiredTime, ImmutableArray<ShareBand> Shares, ImmutableArray<string> From);
