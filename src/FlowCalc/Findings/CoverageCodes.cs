using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>The codes of findings of a coverage; they stand in <see cref="FindingCodes.All"/> with the others.</summary>
public static class CoverageCodes
{
    /// <summary>A nozzle points at a person.</summary>
    public const string AimedAtPerson = "aimed-at-person";

    /// <summary>A case of the discharge has no answer, so that what zones get in it is not known.</summary>
    public const string CaseNotAnswered = "case-not-answered";

    /// <summary>A space that is to be flooded does not hold its agent.</summary>
    public const string FloodingNotClaimable = "flooding-not-claimable";

    /// <summary>A fuel needs more agent than the tables say.</summary>
    public const string FuelNeedsMore = "fuel-needs-more";

    /// <summary>People need longer to leave than they may stay.</summary>
    public const string LeavingTooSlow = "leaving-too-slow";

    /// <summary>A gas leaves people too little oxygen.</summary>
    public const string LowOxygen = "low-oxygen";

    /// <summary>A zone has a single nozzle.</summary>
    public const string OneNozzleZone = "one-nozzle-zone";

    /// <summary>The edge of a footprint does not close.</summary>
    public const string OpenFootprint = "open-footprint";

    /// <summary>A spray ends nearer or farther than it does its work.</summary>
    public const string OutOfThrow = "out-of-throw";

    /// <summary>A concentration at which harm was seen comes where people are.</summary>
    public const string OverLoael = "over-loael";

    /// <summary>A concentration over that without harm seen comes where people are.</summary>
    public const string OverNoael = "over-noael";

    /// <summary>No spray comes to a target.</summary>
    public const string TargetNotCovered = "target-not-covered";

    /// <summary>Fewer zones than a rule asks for have a nozzle.</summary>
    public const string TooFewZones = "too-few-zones";

    /// <summary>A flooded zone gets too little agent.</summary>
    public const string TooLittleAgent = "too-little-agent";

    /// <summary>A zone has no nozzle.</summary>
    public const string ZoneWithoutNozzle = "zone-without-nozzle";

    /// <summary>All codes of a coverage, in ordinal order.</summary>
    public static ImmutableArray<FindingDefinition> All { get; } =
    [
        new(AimedAtPerson, "The axis of a spray points at or near a person whom no body hides.", [Severity.Fail], DefaultLimits.Find(AimedAtPerson)!.Source),
        new(CaseNotAnswered, "A case of the discharge has no answer, so that nobody knows what zones get in it.", [Severity.Fail], "the engine"),
        new(FloodingNotClaimable, "A zone is to be flooded, and the agent is a liquid, air goes through it, openings do not shut, or nobody says whether they do.", [Severity.Fail], DefaultLimits.Find(FloodingNotClaimable)!.Source),
        new(FuelNeedsMore, "The hazard of a zone is an alcohol, hydrogen or a metal, which no table here covers.", [Severity.Note], "common practice, from memory"),
        new(LeavingTooSlow, "People need longer to leave a zone than its highest concentration allows them.", [Severity.Fail], DefaultLimits.Find(LeavingTooSlow)!.Source),
        new(LowOxygen, "At its hottest a gas leaves little oxygen in a zone with people.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(LowOxygen)!.Source),
        new(OneNozzleZone, "A zone has a single nozzle, so that nothing is left of its protection when that one is blocked.", [Severity.Note], DefaultLimits.Find(OneNozzleZone)!.Source),
        new(OpenFootprint, "Half angle and tilt of a spray are 90° or more together, so that its edge runs out to no end and it has no mean density.", [Severity.Note], "geometry"),
        new(OutOfThrow, "What a spray is aimed at, else the first surface on its axis, is nearer or farther than the range that the document states of it; without one, nearer than 0.1 m.", [Severity.Note], $"the nozzle's range; 0.1 m: {DefaultLimits.CommonPractice}"),
        new(OverLoael, "At its hottest the most that a zone with people can get makes a concentration at which harm was seen.", [Severity.Fail], DefaultLimits.Find(OverLoael)!.Source),
        new(OverNoael, "At its hottest the most that a zone with people can get makes a concentration over the highest without harm seen.", [Severity.Warn], DefaultLimits.Find(OverNoael)!.Source),
        new(TargetNotCovered, "A target is in no cone, out of the range of those that it is in, or behind a body.", [Severity.Warn], "geometry"),
        new(TooFewZones, "Fewer zones than the limit have a nozzle.", [Severity.Warn], DefaultLimits.Find(TooFewZones)!.Source),
        new(TooLittleAgent, "In the case that gives a flooded zone least it gets less agent than it needs at its coldest.", [Severity.Fail], DefaultLimits.Find(TooLittleAgent)!.Source),
        new(ZoneWithoutNozzle, "The document has a zone in which no nozzle is.", [Severity.Fail], "the document"),
    ];
}
