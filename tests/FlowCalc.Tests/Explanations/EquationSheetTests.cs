using System.Text.RegularExpressions;
using FlowCalc.Explanations;

namespace FlowCalc.Tests.Explanations;

public partial class EquationSheetTests
{
    [Fact]
    public void Every_equation_has_an_id_of_its_own_and_all_that_a_reader_needs()
    {
        Assert.Equal(EquationSheet.All.Length, EquationSheet.All.Select(equation => equation.Id).Distinct().Count());
        foreach (var equation in EquationSheet.All)
        {
            Assert.Matches("^[a-z0-9]+(-[a-z0-9]+)*$", equation.Id);
            foreach (var text in (string[])[equation.Name, equation.Form, equation.Range, equation.Source])
                Assert.False(string.IsNullOrWhiteSpace(text), equation.Id);
            Assert.Equal(equation.Symbols.Length, equation.Symbols.Select(symbol => symbol.Symbol).Distinct().Count());
            Assert.All(equation.Symbols, symbol => Assert.False(string.IsNullOrWhiteSpace(symbol.Meaning) || string.IsNullOrWhiteSpace(symbol.Unit.Si), equation.Id));
        }
    }

    [Fact]
    public void Every_symbol_that_an_equation_puts_a_number_to_is_explained()
    {
        foreach (var equation in EquationSheet.All)
        {
            var braced = Braced().Matches(equation.Template + equation.With).Select(match => match.Groups[1].Value).Distinct().ToArray();
            Assert.All(braced, symbol => Assert.Contains(equation.Symbols, known => known.Symbol == symbol));
            Assert.DoesNotContain('{', equation.Form);
        }
    }

    [Fact]
    public void Every_equation_is_redone_by_a_formula_of_the_tests() =>
        Assert.Equal(EquationSheet.All.Select(equation => equation.Id).Order(StringComparer.Ordinal), HandFormulas.Ids.Order(StringComparer.Ordinal));

    [GeneratedRegex(@"\{([^}]*)\}")]
    private static partial Regex Braced();
}
