using System.Collections.Immutable;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>How much of a surface the cones cover.</summary>
/// <param name="Surface">The surface.</param>
/// <param name="Area">Its area.</param>
/// <param name="Covered">What of it is in at least one cone.</param>
/// <param name="CoveredTwice">What of it is in at least two.</param>
/// <param name="Nozzles">Indices of the nozzles whose cones reach it, in the order of the points.</param>
/// <param name="LeastDensity">Mean over the surface of what lands on it, least over the cases, m³/s/m²; null where a footprint does not close or a flow is not known.</param>
/// <param name="MostDensity">The greatest.</param>
public sealed record SurfaceCover(Surface Surface, Area Area, Area Covered, Area CoveredTwice, ImmutableArray<int> Nozzles, double? LeastDensity, double? MostDensity)
{
    /// <summary>Part of it that is in at least one cone, 0 to 1.</summary>
    public double Part => Covered.SquareMeters / Area.SquareMeters;
}
