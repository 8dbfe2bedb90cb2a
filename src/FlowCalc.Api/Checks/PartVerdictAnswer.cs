using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Checks;

/// <summary>What came of one part of the job.</summary>
/// <param name="Part">Its name, which is that of its answer.</param>
/// <param name="Verdict">The worst severity of its findings; <c>fail</c> where there is no answer although the document asks for one; null where it has nothing to answer from.</param>
/// <param name="Why">Why there is no answer; null where there is one.</param>
public sealed record PartVerdictAnswer(
    [property: AllowedValues("flow", "discharge", "cutList", "mount", "circuit", "coverage", "upkeep", "calibration")] string Part,
    [property: AllowedValues("pass", "note", "warn", "fail", null)] string? Verdict,
    string? Why);
