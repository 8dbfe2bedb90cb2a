using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>A change that was tried by solving the changed layout, and what it gave.</summary>
/// <param name="Message">One sentence with the numbers before and after.</param>
/// <param name="Changes">What was changed.</param>
/// <param name="Before">The measure before the change, as in the finding.</param>
/// <param name="After">The same measure after it.</param>
public sealed record Cure(string Message, ImmutableArray<CureChange> Changes, Measure Before, Measure After);
