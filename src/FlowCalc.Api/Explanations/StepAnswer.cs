using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Explanations;

/// <summary>One line of the calculation.</summary>
/// <param name="Place">What it belongs to: the bottle or the supply held at a pressure, a run, a point, a zone; all runs in one tube; a layout of a study as a whole; an input that varies; a finding or <c>verdict</c>.</param>
/// <param name="Id">Id of that run, point or zone; of the supply point for the supply; name of the tube or layout, path of the input, code of the finding.</param>
/// <param name="Part">What of it.</param>
/// <param name="CountsAs">Where the result is a drop of pressure of the answer, under which of the <c>losses</c> it counts; else null.</param>
/// <param name="Equation">Id of the equation.</param>
/// <param name="Values">What goes in.</param>
/// <param name="Result">What comes out.</param>
/// <param name="Worked">The equation with the numbers in place, in SI with six digits each, of pressures eight.</param>
public sealed record StepAnswer(
    [property: AllowedValues("supply", "run", "point", "zone", "tube", "layout", "input", "finding")] string Place,
    string Id,
    string Part,
    [property: AllowedValues("outlet", "tube", "bends", "tees", "fittings", "boreChanges", "rise")] string? CountsAs,
    string Equation,
    ImmutableArray<ValueAnswer> Values,
    ValueAnswer Result,
    string Worked);
