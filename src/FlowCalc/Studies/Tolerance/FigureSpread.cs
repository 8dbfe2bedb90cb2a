using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>The spread of one figure.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Summary">Its spread.</param>
public sealed record FigureSpread(Figure Figure, SampleSummary Summary);
