using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Coverage;

/// <summary>What a zone gets, and what that makes of its air.</summary>
/// <param name="Id">The zone.</param>
/// <param name="Protection">How it is protected.</param>
/// <param name="Occupied">Whether people are in it.</param>
/// <param name="Nozzles">Its nozzles.</param>
/// <param name="Mass">Agent that it gets, over the cases and what the model leaves open; null where that is not known.</param>
/// <param name="LeastCase">The case with the least; null where it is of no discharge.</param>
/// <param name="MostCase">The case with the most; null where it is of no discharge.</param>
/// <param name="Air">What fresh air does; null where volume or airflow is not known.</param>
/// <param name="Need">What it takes to flood it; null for what is not flooded, of a liquid, and where too little is known.</param>
/// <param name="Exposure">What its air becomes, shut and still; null of a liquid and where too little is known.</param>
public sealed record ZoneFillAnswer(
    string Id,
    [property: AllowedValues("flooding", "local")] string Protection,
    bool Occupied,
    ImmutableArray<string> Nozzles,
    SpanAnswer? Mass,
    string? LeastCase,
    string? MostCase,
    ZoneAirAnswer? Air,
    FloodingNeedAnswer? Need,
    ZoneExposureAnswer? Exposure);
