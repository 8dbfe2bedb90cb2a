namespace FlowCalc.Layouts;

/// <summary>One run in, one out, with the loss of the step in bore.</summary>
/// <inheritdoc cref="LayoutPoint" path="/param"/>
public sealed record Reducer(string Id, Place? At, string? Note) : LayoutPoint(Id, At, Note);
