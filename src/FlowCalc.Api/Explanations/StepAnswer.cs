using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Explanations;

/// <summary>One line of the calculation.</summary>
/// <param name="Place">What it belongs to: the bottle or the supply held at a pressure, a run, or a point.</param>
/// <param name="Id">Id of that run or point; of the supply point for the supply.</param>
/// <param name="Part">What of it.</param>
/// <param name="CountsAs">Where the result is a drop of pressure of the answer, under which of the <c>losses</c> it counts; else null.</param>
/// <param name="Equation">Id of the equation.</param>
/// <param name="Values">What goes in.</param>
/// <param name="Result">What comes out.</param>
/// <param name="Worked">The equation with the numbers in place, in SI with six digits each, of pressures eight.</param>
public sealed record StepAnswer(
    [property: AllowedValues("supply", "run", "point")] string Place,
    string Id,
    string Part,
    [property: AllowedValues("outlet", "tube", "bends", "tees", "fittings", "boreChanges", "rise")] string? CountsAs,
    string Equation,
    ImmutableArray<ValueAnswer> Values,
    ValueAnswer Result,
    string Worked);
