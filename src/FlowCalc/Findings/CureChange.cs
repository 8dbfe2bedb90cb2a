namespace FlowCalc.Findings;

/// <summary>One change of a cure. All changes of a cure together make the changed document; one alone may not.</summary>
/// <param name="Path">What is changed, by id or name, such as <c>runs/R11/tube</c>; a stroke within a name is <c>~1</c>, a tilde <c>~0</c>.</param>
/// <param name="From">What it was, in words; null for a member that was not there.</param>
/// <param name="To">What it becomes, as the document says it; null for a member that goes.</param>
public sealed record CureChange(string Path, ChangeValue? From, ChangeValue? To);
