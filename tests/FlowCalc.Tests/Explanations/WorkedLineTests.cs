using FlowCalc.Explanations;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Explanations;

public class WorkedLineTests
{
    static ExplanationStep Step(string id, double result, params double[] values)
    {
        var equation = EquationSheet.All.Single(equation => equation.Id == id);
        return new(
            ExplainedPlace.Run, "R", "tube", null, equation, [.. values.Zip(equation.Symbols.Skip(1), (value, symbol) => new StepValue(symbol.Symbol, value, symbol.Unit))],
            new(equation.Symbols[0].Symbol, result, equation.Symbols[0].Unit));
    }

    [Fact]
    public void Numbers_stand_in_place_of_symbols_in_SI_and_the_result_in_the_units_of_the_answer_too()
    {
        var step = Step("tube-friction", 33_720.5, 0.0213, 1.32, 0.004, 998.2, 3.1);

        Assert.Equal("Δp = 0.0213·1.32/0.004·998.2·3.1·|3.1|/2 = 33720.5 Pa = 0.337205 bar", WorkedLine.Of(step, UnitSystem.Metric));
        Assert.Equal("Δp = 0.0213·1.32/0.004·998.2·3.1·|3.1|/2 = 33720.5 Pa = 4.89075 psi", WorkedLine.Of(step, UnitSystem.Us));
        Assert.Equal("Δp = 0.0213·1.32/0.004·998.2·3.1·|3.1|/2 = 33720.5 Pa", WorkedLine.Of(step, UnitSystem.Si));
    }

    [Fact]
    public void A_negative_number_stands_in_brackets_and_a_small_one_has_an_exponent() =>
        Assert.Equal("Δp = 998.2·9.80665·(-1e-6) = -0.00978906 Pa = -9.78906e-8 bar", WorkedLine.Of(Step("rise", -0.009789058, 998.2, 9.80665, -1e-6), UnitSystem.Metric));

    [Fact]
    public void An_implicit_equation_says_what_makes_its_sides_equal() =>
        Assert.Equal(
            "f = 0.031, which makes 1/√0.031 = -2·log10(1.5e-6/0.006/3.7 + 2.51/(28000·√0.031))",
            WorkedLine.Of(Step("friction-turbulent", 0.031, 28_000, 1.5e-6, 0.006), UnitSystem.Metric));

    [Fact]
    public void What_stands_for_a_longer_expression_comes_behind_the_result() =>
        Assert.Equal("K = 0.42·s + 2.56·s³ = 1.20208, with s = sin(1.5708/2)", WorkedLine.Of(Step("sharp-turn", 1.202082, 1.570796), UnitSystem.Metric));

    [Fact]
    public void A_sum_shows_its_terms() =>
        Assert.Equal("100 + (-20) + 5", WorkedLine.Of(new(
            ExplainedPlace.Run, "R", "run", null, EquationSheet.All.Single(equation => equation.Id == "drop-of-run"),
            [.. new[] { 100.0, -20, 5 }.Select((value, at) => new StepValue($"Δp_{at + 1}", value, SymbolUnit.Of(QuantityKind.Pressure)))],
            new("Δp", 85, SymbolUnit.Of(QuantityKind.Pressure))), UnitSystem.Si).Split(" = ")[1]);

    [Fact]
    public void An_absolute_pressure_says_so_in_every_system()
    {
        Assert.Equal(new WrittenQuantity(5, "bara"), SymbolUnit.AbsolutePressure.Write(5e5, UnitSystem.Metric));
        Assert.Equal("psia", SymbolUnit.AbsolutePressure.Write(5e5, UnitSystem.Us).Unit);
        Assert.Equal(new WrittenQuantity(5e5, "Pa(a)"), SymbolUnit.AbsolutePressure.Write(5e5, UnitSystem.Si));
    }
}
