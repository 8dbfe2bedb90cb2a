using System.Collections.Immutable;
using FlowCalc.Circuits;

namespace FlowCalc.Findings.Circuits;

/// <summary>A change of a circuit that is tried.</summary>
/// <param name="Changed">The changed circuit.</param>
/// <param name="Changes">What was changed, in the words of the document.</param>
/// <param name="Words">The change, to follow "With".</param>
/// <param name="Cost">What to compare changes by: cubic metres of copper besides, or the part by which a resistance grows.</param>
sealed record CircuitChange(Circuit Changed, ImmutableArray<CureChange> Changes, string Words, double Cost);
