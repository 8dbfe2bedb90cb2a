using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>One thing that the engine noticed about a design: data, never an exception.</summary>
/// <param name="Code">Readable and stable, such as <c>starved-nozzle</c>; never reused.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Where">Ids of the points and runs that it concerns.</param>
/// <param name="Message">One sentence with the value, the limit and both units.</param>
/// <param name="Measured">What was found; null where there is no number.</param>
/// <param name="Limit">What it was held against; null where there is no number.</param>
/// <param name="Source">Whose limit it is.</param>
/// <param name="Cure">A change that was tried, and what it gave; null where none was found.</param>
/// <param name="Case">The case of a discharge, such as <c>-15 °C, on the roof</c>; null where the finding is of no one case.</param>
public sealed record Finding(
    string Code,
    Severity Severity,
    ImmutableArray<string> Where,
    string Message,
    Measure? Measured,
    Measure? Limit,
    string Source,
    Cure? Cure,
    string? Case = null);
