using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Studies.Comparing;

/// <summary>A layout under a name, to be held against others.</summary>
/// <param name="Name">Its name, unique in a comparison.</param>
/// <param name="Layout">The layout.</param>
/// <param name="Changes">What was changed from the base; empty for the base and for a layout given as a whole.</param>
public sealed record Variant(string Name, Layout Layout, ImmutableArray<DocumentChange> Changes);
