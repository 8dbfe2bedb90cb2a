using FlowCalc.Api.Coverage;
using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the call on coverage.</summary>
internal static class CoverageDescriptions
{
    /// <summary>Describes <c>POST /v1/coverage</c>.</summary>
    public static void DescribeCoverage(this RouteHandlerBuilder call) => call
        .Produces<CoverageAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and answers two things. Of nozzles with a place, an aim and a spray: where their cones land on the document's surfaces (ellipse, tilt, distance, area on the surface, mean density), how much of each surface is in at least one and in at least two cones, which targets they reach or a body hides, and whether one points at a person. Of zones: what they get in the case that gives least and in the one that gives most, of a bottle by following its discharge; for zones that are flooded what they need at the coldest, the concentration that they come to, what is left of oxygen, how long people may be in it, and what air through the zone makes of it.

                Cones are full, straight and in still air. Areas on surfaces are exact to rounding for one cone, overlaps to about a hundred-thousandth of the surface. Bodies hide targets and persons, not parts of surfaces. `notProven` says what that does not prove, `notAnswered` what the document gives too little for. A document with neither `coverage` nor zones is a 422.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.CoveragePoints} points, at most {limits.CoveragePairs} surfaces, targets and persons together times nozzles, 200 entries of each list, and {limits.CoverageTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("coverage"), "The coverage; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });
}
