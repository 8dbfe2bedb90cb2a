using System.Collections.Immutable;

namespace FlowCalc.Explanations;

/// <summary>One line of a calculation: an equation with its numbers in place.</summary>
/// <param name="Place">What it belongs to.</param>
/// <param name="Id">Id of that run or point; that of the supply point for the supply.</param>
/// <param name="Part">What of it, such as <c>bend 1: 90°</c>.</param>
/// <param name="CountsAs">Where the result is a drop of pressure of the answer, as what it counts; else null.</param>
/// <param name="Equation">The equation.</param>
/// <param name="Values">What goes into it, in the order of the equation's symbols.</param>
/// <param name="Result">What comes out.</param>
public sealed record ExplanationStep(
    ExplainedPlace Place, string Id, string Part, LossKind? CountsAs, Equation Equation, ImmutableArray<StepValue> Values, StepValue Result);
