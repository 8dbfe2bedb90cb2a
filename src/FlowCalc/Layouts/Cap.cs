namespace FlowCalc.Layouts;

/// <summary>A closed end.</summary>
/// <inheritdoc cref="LayoutPoint" path="/param"/>
public sealed record Cap(string Id, Place? At, string? Note) : LayoutPoint(Id, At, Note);
