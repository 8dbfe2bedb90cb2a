using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A length of tube between two points.</summary>
public sealed record Run
{
    /// <summary>Its name, unique among runs; <c>from-to</c> where the document gives none.</summary>
    public required string Id { get; init; }

    /// <summary>Index in <see cref="Layout.Points"/> of the point that feeds it.</summary>
    public required int From { get; init; }

    /// <summary>Index in <see cref="Layout.Points"/> of the point that it feeds.</summary>
    public required int To { get; init; }

    /// <summary>The port by which it leaves a run-fed tee; null elsewhere.</summary>
    public TeePort? Leaves { get; init; }

    /// <summary>The tube.</summary>
    public required Tube Tube { get; init; }

    /// <summary>Developed length of the centre line with the arcs, 0 to 10 km.</summary>
    public required Length Length { get; init; }

    /// <summary>Height of the end over the start; negative downwards.</summary>
    public required Length Rise { get; init; }

    /// <summary>The bends, in order along the run where a route gives them.</summary>
    public ImmutableArray<Bend> Bends { get; init; } = [];

    /// <summary>The fittings.</summary>
    public ImmutableArray<PlacedFitting> Fittings { get; init; } = [];

    /// <summary>Any extra loss coefficient on the tube's velocity head, 0 or more, dimensionless.</summary>
    public double LossCoefficient { get; init; }

    /// <summary>The way in space; null for a run given by its length.</summary>
    public RunRoute? Route { get; init; }

    /// <summary>How the tube ends in the fitting of its first point, where the run says so itself.</summary>
    public Joint StartJoint { get; init; }

    /// <summary>How the tube ends in the fitting of its last point, where the run says so itself.</summary>
    public Joint EndJoint { get; init; }

    /// <summary>Places of clips along the developed centre line from the run's start, rising; null where the document gives none.</summary>
    public ImmutableArray<Length>? Clips { get; init; }

    /// <summary>Parts of it that pass something hot, in the document's order.</summary>
    public ImmutableArray<HotPlace> HotPlaces { get; init; } = [];

    /// <summary>Free text; null for none.</summary>
    public string? Note { get; init; }
}
