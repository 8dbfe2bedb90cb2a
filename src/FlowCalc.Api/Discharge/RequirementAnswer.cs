using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Discharge;

/// <summary>What was required of the discharge, and when it was done.</summary>
/// <param name="Part">Part of the contents or of the quantity, 0 to 1.</param>
/// <param name="Of">What the part is of.</param>
/// <param name="Quantity">The quantity; null with the contents.</param>
/// <param name="Stated">Whether the document states it; else it is the usual one of the application.</param>
/// <param name="Time">When it was done; null where that never happens.</param>
/// <param name="Within">Shortest time, null for none, and longest, null for none.</param>
public sealed record RequirementAnswer(
    double Part, [property: AllowedValues("contents", "quantity")] string Of, Quantity? Quantity, bool Stated, Quantity? Time, ImmutableArray<Quantity?> Within);
