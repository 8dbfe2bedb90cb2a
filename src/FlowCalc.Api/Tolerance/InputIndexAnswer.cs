namespace FlowCalc.Api.Tolerance;

/// <summary>What an input explains of a figure.</summary>
/// <param name="Path">The input.</param>
/// <param name="Index">The part of the figure's variance that it alone explains (first-order index); by chance a little below 0 where it matters little.</param>
/// <param name="StandardError">Its standard error.</param>
public sealed record InputIndexAnswer(string Path, double Index, double StandardError);
