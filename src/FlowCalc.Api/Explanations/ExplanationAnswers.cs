using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Explanations;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Explanations;

/// <summary>Writes explanations of the engine as answers.</summary>
internal static class ExplanationAnswers
{
    static readonly SymbolUnit Work = SymbolUnit.Always("J/kg"), Flux = SymbolUnit.Always("kg/(m2·s)");

    /// <summary>The explanation of a steady flow.</summary>
    /// <exception cref="NotFiniteException">A number of it is not finite.</exception>
    public static FlowExplanationAnswer Of(FlowExplanation explanation, UnitWriter write) =>
        new(Equations(explanation.Equations), Steps(explanation.Steps, write), States(explanation.States, write), explanation.LeftOut);

    /// <summary>The explanation of a discharge.</summary>
    /// <exception cref="NotFiniteException">A number of it is not finite.</exception>
    public static DischargeExplanationAnswer Of(DischargeExplanation explanation, UnitWriter write) => new(
        Equations(explanation.Equations),
        [.. explanation.Cases.Select(one => new CaseExplanationAnswer(write.Of(one.Temperature.Kelvins, QuantityKind.Temperature), one.Attitude, Steps(one.Steps, write), States(one.States, write)))],
        explanation.LeftOut);

    /// <summary>The explanation of a cut list.</summary>
    /// <exception cref="NotFiniteException">A number of it is not finite.</exception>
    public static CutListExplanationAnswer Of(CutListExplanation explanation, UnitWriter write) =>
        new(Equations(explanation.Equations), Steps(explanation.Steps, write), explanation.LeftOut);

    /// <summary>The explanation of a study.</summary>
    /// <exception cref="NotFiniteException">A number of it is not finite.</exception>
    public static StudyExplanationAnswer Of(StudyExplanation explanation, UnitWriter write) => new(
        Equations(explanation.Equations),
        [.. explanation.Layouts.Select(one => new LayoutExplanationAnswer(one.Name, Steps(one.Steps, write), States(one.States, write)))],
        Steps(explanation.Steps, write),
        explanation.LeftOut);

    static ImmutableArray<EquationAnswer> Equations(ImmutableArray<Equation> equations) =>
        [.. equations.Select(equation => new EquationAnswer(
            equation.Id, equation.Name, equation.Form, [.. equation.Symbols.Select(symbol => new SymbolAnswer(symbol.Symbol, symbol.Meaning, symbol.Unit.Si))], equation.Range, equation.Source))];

    static ImmutableArray<StepAnswer> Steps(ImmutableArray<ExplanationStep> steps, UnitWriter write) =>
        [.. steps.Select(step => new StepAnswer(
            ExplainedPlaceWords.Of(step.Place), step.Id, step.Part, step.CountsAs is { } kind ? LossWords.Of(kind) : null, step.Equation.Id,
            [.. step.Values.Select(value => Value(value, write))], Value(step.Result, write), WorkedLine.Of(step, write.System)))];

    static ImmutableArray<PathStateAnswer> States(ImmutableArray<PathState> states, UnitWriter write) =>
        [.. states.Select(state => new PathStateAnswer(
            write.Absolute(state.Pressure), write.Of(state.Density, QuantityKind.Density), write.Of(state.Potential, QuantityKind.Pressure), write.Of(state.Work, Work),
            write.Of(state.Viscosity, QuantityKind.Viscosity), write.Of(state.NozzleFlux, Flux)))];

    static ValueAnswer Value(StepValue value, UnitWriter write)
    {
        var (number, unit) = write.Of(value.Si, value.Unit);
        return new(value.Symbol, number, unit);
    }
}
