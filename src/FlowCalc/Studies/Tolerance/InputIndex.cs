using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>What one input explains of a figure.</summary>
/// <param name="Path">The input's path.</param>
/// <param name="Index">Its first-order index.</param>
public sealed record InputIndex(string Path, FirstOrderIndex Index);
