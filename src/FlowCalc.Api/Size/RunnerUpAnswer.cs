using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Size;

/// <summary>The next best sizes that were found, which are not proven to be the next best.</summary>
/// <param name="Value">The objective's measure of them.</param>
/// <param name="WorstDeviation">Largest deviation of a nozzle, without sign.</param>
/// <param name="Changes">What they change in the document as it was sent.</param>
public sealed record RunnerUpAnswer(Quantity? Value, double WorstDeviation, ImmutableArray<SizeChangeAnswer> Changes);
