using System.Collections.Immutable;

namespace FlowCalc.Layouts;

/// <summary>What came of reading a document: a layout, or every fault in it.</summary>
/// <param name="Layout">The layout; null where there are faults.</param>
/// <param name="Faults">All faults, in the document's order; empty where there is a layout.</param>
public sealed record LayoutReading(Layout? Layout, ImmutableArray<LayoutFault> Faults);
