using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Findings.Coverage;

/// <summary>One change for a coverage, to be tried.</summary>
/// <param name="Changes">What is changed in the document.</param>
/// <param name="Words">The change in words, to follow "With".</param>
/// <param name="Changed">The layout with it, as the changed document reads.</param>
/// <param name="MovesFlow">Whether its discharge has to be followed anew; where a nozzle is only turned it has not.</param>
sealed record CoverageChange(ImmutableArray<CureChange> Changes, string Words, Layout Changed, bool MovesFlow);
