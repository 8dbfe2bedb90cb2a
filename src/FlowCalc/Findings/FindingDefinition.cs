using System.Collections.Immutable;

namespace FlowCalc.Findings;

/// <summary>What a code of a finding stands for.</summary>
/// <param name="Code">The code; never reused for something else.</param>
/// <param name="When">When it is found, in words.</param>
/// <param name="Severities">The severities that it can have with the default limits, mildest first.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record FindingDefinition(string Code, string When, ImmutableArray<Severity> Severities, string Source);
