using System.Collections.Immutable;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>Where the spray of a nozzle goes.</summary>
/// <param name="Point">Index of the nozzle in <see cref="Layouts.Layout.Points"/>.</param>
/// <param name="Axis">Where it points, of length 1; null where the document does not say.</param>
/// <param name="Spray">Its cone; null where the document does not say.</param>
/// <param name="Distance">Way along the axis to what it aims at, else to the first surface that the axis meets; null for neither.</param>
/// <param name="Flow">Volume flow out of it; null of a gas or an agent that boils, and where there is no flow.</param>
/// <param name="Footprints">What of surfaces is in its cone, in the order of the surfaces; those in which nothing is are left out.</param>
public sealed record NozzleSpray(int Point, Direction? Axis, Spray? Spray, Length? Distance, FlowSpan? Flow, ImmutableArray<Footprint> Footprints)
{
    /// <summary>Its cone; null where place, aim or spray is not known.</summary>
    internal SprayCone? Cone { get; init; }
}
