using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Cli;

/// <summary>What is asked of a command beside its document.</summary>
/// <param name="Units">The system of units of the answer.</param>
/// <param name="IsJson">Whether to answer as the service does, in JSON.</param>
/// <param name="Least">The mildest verdict that ends with another code than a pass.</param>
/// <param name="Progress">Told how far a long job is; null where nobody looks.</param>
sealed record Asked(UnitSystem Units, bool IsJson, Severity Least, IProgress<int>? Progress);
