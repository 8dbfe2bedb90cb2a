namespace FlowCalc.Findings;

/// <summary>One change of a cure.</summary>
/// <param name="Path">What is changed, by id, such as <c>runs/R11/tube</c>.</param>
/// <param name="From">What it was.</param>
/// <param name="To">What it becomes.</param>
public sealed record CureChange(string Path, string From, string To);
