using System.Collections.Immutable;
using FlowCalc.Findings;

namespace FlowCalc.Api.Answers;

/// <summary>A change that was tried by solving the changed layout.</summary>
/// <param name="Message">One sentence with the numbers before and after.</param>
/// <param name="Changes">What was changed.</param>
/// <param name="Before">The measure of the finding before the change.</param>
/// <param name="After">The same measure after it.</param>
public sealed record CureAnswer(string Message, ImmutableArray<CureChange> Changes, Quantity Before, Quantity After)
{
    internal static CureAnswer Of(Cure cure, UnitWriter write) => new(cure.Message, cure.Changes, write.Of(cure.Before), write.Of(cure.After));
}
