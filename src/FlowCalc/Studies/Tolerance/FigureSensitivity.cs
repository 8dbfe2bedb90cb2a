using System.Collections.Immutable;

namespace FlowCalc.Studies.Tolerance;

/// <summary>What the inputs explain of a figure.</summary>
/// <param name="Case">Index of the case.</param>
/// <param name="Figure">The figure.</param>
/// <param name="Samples">Samples that have it.</param>
/// <param name="Inputs">The inputs, by what they explain, most first; empty where the figure does not move or too few samples have it.</param>
/// <param name="Statement">What matters most, in a sentence.</param>
public sealed record FigureSensitivity(int Case, Figure Figure, int Samples, ImmutableArray<InputIndex> Inputs, string Statement);
