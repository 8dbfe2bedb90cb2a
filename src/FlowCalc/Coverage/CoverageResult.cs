using System.Collections.Immutable;

namespace FlowCalc.Coverage;

/// <summary>Where the sprays of a layout land, and what its zones get.</summary>
/// <param name="Nozzles">Every nozzle, in the order of <see cref="Layouts.Layout.Points"/>.</param>
/// <param name="Surfaces">Every surface, in the document's order.</param>
/// <param name="Targets">Every target, in the document's order.</param>
/// <param name="Persons">Every person, in the document's order.</param>
/// <param name="Zones">Every zone, in the document's order.</param>
/// <param name="NotAnswered">What the document gives too little for.</param>
/// <param name="Assumptions">What the document left open of the coverage, and what was taken.</param>
public sealed record CoverageResult(
    ImmutableArray<NozzleSpray> Nozzles,
    ImmutableArray<SurfaceCover> Surfaces,
    ImmutableArray<TargetCover> Targets,
    ImmutableArray<PersonAim> Persons,
    ImmutableArray<ZoneFill> Zones,
    ImmutableArray<string> NotAnswered,
    ImmutableArray<Assumption> Assumptions);
