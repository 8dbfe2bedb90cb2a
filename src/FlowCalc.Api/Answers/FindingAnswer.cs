using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Findings;

namespace FlowCalc.Api.Answers;

/// <summary>One thing that the engine noticed about the design.</summary>
/// <param name="Code">What it is, in stable readable words such as <c>starved-nozzle</c>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Where">Ids of the points and runs that it concerns.</param>
/// <param name="Case">The case of a discharge, such as <c>-15 °C, on the roof</c>; null where the finding is of no one case.</param>
/// <param name="Message">One sentence with the numbers.</param>
/// <param name="Measured">What was found; null where there is no number.</param>
/// <param name="Limit">What it was held against; null where there is no number.</param>
/// <param name="Source">Whose limit it is.</param>
/// <param name="Cure">A change that was tried, and what it gave; null where none was found.</param>
public sealed record FindingAnswer(
    string Code,
    [property: AllowedValues("note", "warn", "fail")] string Severity,
    ImmutableArray<string> Where,
    string? Case,
    string Message,
    Quantity? Measured,
    Quantity? Limit,
    string Source,
    CureAnswer? Cure)
{
    internal static FindingAnswer Of(Finding finding, UnitWriter write) => new(
        finding.Code, SeverityWord.Of(finding.Severity), finding.Where, finding.Case, finding.Message, write.Of(finding.Measured), write.Of(finding.Limit), finding.Source,
        finding.Cure is { } cure ? CureAnswer.Of(cure, write) : null);
}
