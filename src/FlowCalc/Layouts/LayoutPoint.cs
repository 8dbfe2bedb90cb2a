namespace FlowCalc.Layouts;

/// <summary>A point of the layout; each kind is a record of its own.</summary>
/// <param name="Id">Its name in the document, unique among points.</param>
/// <param name="At">Where it is; null where not given.</param>
/// <param name="Note">Free text; null for none.</param>
public abstract record LayoutPoint(string Id, Place? At, string? Note)
{
    /// <summary>How tubes end in its fitting, where the run does not say otherwise.</summary>
    public Joint Joint { get; init; }
}
