using FlowCalc.Findings;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>How likely something is found.</summary>
/// <param name="Code">The finding's code.</param>
/// <param name="Severity">The severity to which it comes.</param>
/// <param name="Where">Id of the point, run or zone; of a finding of several places, the first; empty for none.</param>
/// <param name="Chance">How often.</param>
public sealed record FindingChance(string Code, Severity Severity, string Where, Chance Chance);
