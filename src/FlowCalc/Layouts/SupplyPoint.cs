namespace FlowCalc.Layouts;

/// <summary>Where the bottle's outlet joins the tube; exactly one in a layout.</summary>
/// <inheritdoc cref="LayoutPoint" path="/param"/>
public sealed record SupplyPoint(string Id, Place? At, string? Note) : LayoutPoint(Id, At, Note);
