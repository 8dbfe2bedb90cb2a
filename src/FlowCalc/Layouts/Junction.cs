namespace FlowCalc.Layouts;

/// <summary>Any number of runs without loss, even where bores differ: for books and peers, not for real fittings.</summary>
/// <inheritdoc cref="LayoutPoint" path="/param"/>
public sealed record Junction(string Id, Place? At, string? Note) : LayoutPoint(Id, At, Note);
