using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Calibration;

/// <summary>How well a cause explains the readings.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Run">Id of the run; null where it is no run.</param>
/// <param name="Unknowns">What was found, with its interval; empty for the layout as drawn.</param>
/// <param name="ChiSquare">Sum of the squares of the residuals, each over its standard uncertainty.</param>
/// <param name="DegreesOfFreedom">Readings less unknowns.</param>
/// <param name="ReducedChiSquare">χ² over the degrees of freedom, about 1 where the cause and the uncertainties are right; null without a degree of freedom.</param>
/// <param name="Chance">Chance that readings scatter as much or more where this cause is the right one; null without a degree of freedom.</param>
/// <param name="Score">χ² + p·ln n + 2·ln m, with p unknowns, n readings and m causes of that kind; less is better.</param>
/// <param name="Behind">By how much its score is more than that of the likeliest: it is exp(behind/2) times less likely; under 2 the readings do not tell the two apart. Less than 0 where it is likelier than the layout as drawn, but not by enough.</param>
/// <param name="FlowLost">Of a run the part of its flow in the test that it loses; null for every other cause.</param>
public sealed record CauseAnswer(
    [property: AllowedValues("as-drawn", "supply-pressure", "roughness", "bore", "nozzles", "run")] string Cause,
    string? Run,
    ImmutableArray<UnknownAnswer> Unknowns,
    double ChiSquare,
    int DegreesOfFreedom,
    double? ReducedChiSquare,
    double? Chance,
    double Score,
    double Behind,
    double? FlowLost);
