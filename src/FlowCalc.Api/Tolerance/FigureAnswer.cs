using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Tolerance;

/// <summary>How one figure is spread over the samples.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Unit">The unit of its numbers; <c>1</c> for a ratio.</param>
/// <param name="Design">The figure of the layout as it is; null where it has none.</param>
/// <param name="Count">Samples that have it.</param>
/// <param name="Never">Of them, those in which the instant never comes; it counts as later than any, and what that leaves open is null.</param>
/// <param name="Mean">Mean.</param>
/// <param name="StandardDeviation">Standard deviation.</param>
/// <param name="Least">Least.</param>
/// <param name="P05">What 5 % of the samples lie below.</param>
/// <param name="P50">Median.</param>
/// <param name="P95">What 95 % of the samples lie below.</param>
/// <param name="Greatest">Greatest.</param>
public sealed record FigureAnswer(
    [property: AllowedValues("massFlow", "pressure", "share", "deviation", "lowestDeviation", "highestDeviation", "mass", "arrival", "lastArrival", "time95", "requiredTime", "liquidEnd", "end", "peakMassFlow", "leftBehind")] string Figure,
    string Unit,
    double? Design,
    int Count,
    int Never,
    double? Mean,
    double? StandardDeviation,
    double? Least,
    double? P05,
    double? P50,
    double? P95,
    double? Greatest);
