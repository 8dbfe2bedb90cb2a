using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>A figure over the cases of a discharge.</summary>
/// <param name="Least">The least.</param>
/// <param name="Most">The greatest.</param>
public sealed record SpanAnswer(Quantity Least, Quantity Most);
