using System.Collections.Immutable;

namespace FlowCalc.Layouts.Coverage;

/// <summary>A flat face that the spray has to cover.</summary>
/// <param name="Id">Its name among the document's surfaces.</param>
/// <param name="Zone">Id of its zone; null for one that every nozzle may spray.</param>
/// <param name="Corners">Its corners round the edge, three or more; flat, without crossing edges, and with an area.</param>
/// <param name="Faces">A direction out of the side that is to be sprayed; null where either side may be.</param>
public sealed record Surface(string Id, string? Zone, ImmutableArray<Place> Corners, Direction? Faces)
{
    /// <summary>Whether a place is on the side that is to be sprayed.</summary>
    internal bool IsBefore(Direction place)
    {
        if (Faces is not { } outwards) return true;
        var plane = Plane;
        return (place - plane.Origin).Dot(plane.Normal) * outwards.Dot(plane.Normal) > 0;
    }

    internal SurfacePlane Plane => new(Corners);
}
