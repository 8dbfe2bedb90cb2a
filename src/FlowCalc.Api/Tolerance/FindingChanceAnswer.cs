using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Tolerance;

/// <summary>How likely something is found.</summary>
/// <param name="Code">The finding's code, as in the answer of the call itself.</param>
/// <param name="Severity">The severity to which it comes; a place may stand once for each.</param>
/// <param name="Where">Id of the point, run or zone; of a finding of several places the first; null for none.</param>
/// <param name="Chance">How likely.</param>
public sealed record FindingChanceAnswer(string Code, [property: AllowedValues("note", "warn", "fail")] string Severity, string? Where, ChanceAnswer Chance);
