namespace FlowCalc.Layouts.Coverage;

/// <summary>Something that a spray does not get through: a box along the layout's axes.</summary>
/// <param name="Id">Its name among the document's bodies.</param>
/// <param name="From">One corner.</param>
/// <param name="To">The corner across; it differs in all three coordinates.</param>
public sealed record Body(string Id, Place From, Place To);
