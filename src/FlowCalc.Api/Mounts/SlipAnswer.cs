using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>How the bottle is held along its axis.</summary>
/// <param name="FrictionHolds">Force that friction of straps and cradle holds along the axis while nothing lifts the bottle; null without straps.</param>
/// <param name="WithoutStops">Force that the worst case asks along the axis: what friction has to hold where there is no stop.</param>
/// <param name="HoldsWithoutStops">Whether friction alone would hold it in every case.</param>
/// <param name="LooseEnds">Ends that neither a stop nor friction holds: <c>base end</c>, <c>outlet end</c>.</param>
public sealed record SlipAnswer(Quantity? FrictionHolds, Quantity WithoutStops, bool HoldsWithoutStops, ImmutableArray<string> LooseEnds);
