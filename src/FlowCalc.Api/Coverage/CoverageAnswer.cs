using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>Where the sprays of a layout land, what its zones get, and what there is to say about it.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Nozzles">Where the spray of every nozzle goes.</param>
/// <param name="Surfaces">How much of every surface is covered.</param>
/// <param name="Targets">Which nozzles reach every target.</param>
/// <param name="Persons">How near to every person the nearest spray points.</param>
/// <param name="Zones">What every zone gets, and what that makes of its air.</param>
/// <param name="NotAnswered">What the document gives too little for.</param>
/// <param name="NotProven">What geometry and quantity do not prove.</param>
/// <param name="Assumptions">What the document left open, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record CoverageAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    ImmutableArray<NozzleSprayAnswer> Nozzles,
    ImmutableArray<SurfaceAnswer> Surfaces,
    ImmutableArray<TargetAnswer> Targets,
    ImmutableArray<PersonAnswer> Persons,
    ImmutableArray<ZoneFillAnswer> Zones,
    ImmutableArray<string> NotAnswered,
    ImmutableArray<string> NotProven,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine);
