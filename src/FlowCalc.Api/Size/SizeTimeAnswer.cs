using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Size;

/// <summary>When the required part is out of the nozzles, over the cases of the document.</summary>
/// <param name="Shortest">In the quickest case; null where a case never gets there.</param>
/// <param name="Longest">In the slowest case; null where a case never gets there.</param>
/// <param name="LongestBefore">In the slowest case of the layout as it was sent; null where that never gets there or was not followed.</param>
public sealed record SizeTimeAnswer(Quantity? Shortest, Quantity? Longest, Quantity? LongestBefore);
