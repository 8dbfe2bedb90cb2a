using System.Collections.Immutable;
using FlowCalc.Findings;

namespace FlowCalc.Api.Answers;

/// <summary>A change that was tried by solving the changed layout.</summary>
/// <param name="Message">One sentence with the numbers before and after.</param>
/// <param name="Changes">What was changed; all of it together is the one change. As a variant's <c>set</c>, path to <c>to</c>, it gives that very layout.</param>
/// <param name="Before">The measure of the finding before the change.</param>
/// <param name="After">The same measure after it; of a discharge in the same case.</param>
/// <param name="Clears">Whether the finding is then cleared: a failure is none any more, a warning not even that, and no other failure has come. False where no change that was tried does that and this one gains most.</param>
/// <param name="Outcome">The answer that the changed layout gives, in short.</param>
public sealed record CureAnswer(string Message, ImmutableArray<CureChangeAnswer> Changes, Quantity Before, Quantity After, bool Clears, CureOutcomeAnswer Outcome)
{
    internal static CureAnswer Of(Cure cure, UnitWriter write) => new(
        cure.Message, [.. cure.Changes.Select(CureChangeAnswer.Of)], write.Of(cure.Before), write.Of(cure.After), cure.Clears, CureOutcomeAnswer.Of(cure.Outcome, write));
}
