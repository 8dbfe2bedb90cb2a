using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>A change that was tried by solving the changed layout, and what it gave.</summary>
/// <param name="Message">One sentence with the numbers before and after.</param>
/// <param name="Changes">What was changed, in the words of the document; all of it together.</param>
/// <param name="Before">The measure before the change, as in the finding.</param>
/// <param name="After">The same measure after it; of a discharge in the same case.</param>
/// <param name="Clears">Whether the finding is then no longer what it was: a failure no failure, a warning not even that. False where no change that was tried does it and this one gains most. Neither brings a failure that was not there.</param>
/// <param name="Outcome">The answer that the changed layout gives.</param>
public sealed record Cure(string Message, ImmutableArray<CureChange> Changes, Measure Before, Measure After, bool Clears, CureOutcome Outcome);
