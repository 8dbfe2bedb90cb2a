using System.Collections.Immutable;

namespace FlowCalc.Layouts.Coverage;

/// <summary>A flat face that the spray has to cover.</summary>
/// <param name="Id">Its name among the document's surfaces.</param>
/// <param name="Zone">Id of its zone; null for one that every nozzle may spray.</param>
/// <param name="Corners">Its corners round the edge, three or more; flat, without crossing edges, and with an area.</param>
public sealed record Surface(string Id, string? Zone, ImmutableArray<Place> Corners)
{
    internal SurfacePlane Plane => new(Corners);
}
