using System.Collections.Immutable;
using FlowCalc.Findings;

namespace FlowCalc.Checks;

/// <summary>What came of one part of the job.</summary>
/// <param name="Part">Which part.</param>
/// <param name="Verdict">The worst of its findings; <see cref="Severity.Fail"/> where it was asked for and cannot be answered; null where the document has nothing to answer it from.</param>
/// <param name="Findings">Its findings.</param>
/// <param name="Assumptions">What the document left open for it, and what was taken.</param>
/// <param name="Why">Why there is no answer; null where there is one.</param>
public sealed record PartAnswer(JobPart Part, Severity? Verdict, ImmutableArray<Finding> Findings, ImmutableArray<Assumption> Assumptions, string? Why)
{
    internal static PartAnswer Of(JobPart part, Severity verdict, ImmutableArray<Finding> findings, ImmutableArray<Assumption> assumptions) => new(part, verdict, findings, assumptions, null);

    // Nothing was asked, so nothing stands against it.
    internal static PartAnswer NotAsked(JobPart part, string why) => new(part, null, [], [], why);

    internal static PartAnswer Failed(JobPart part, string why) => new(part, Severity.Fail, [], [], why);
}
