using System.Globalization;
using System.Text;
using FlowCalc.Quantities;

namespace FlowCalc.Explanations;

/// <summary>Writes a step with its numbers in place of the symbols, six digits each, in SI; the result in the answer's units behind it.</summary>
public static class WorkedLine
{
    /// <summary>The line.</summary>
    /// <param name="step">The step.</param>
    /// <param name="system">The units of the answer.</param>
    public static string Of(ExplanationStep step, UnitSystem system)
    {
        ArgumentNullException.ThrowIfNull(step);
        var (equation, result) = (step.Equation, step.Result);
        var line = new StringBuilder();
        line.Append(result.Symbol).Append(" = ");
        if (equation.Kind == EquationKind.Implicit)
        {
            Result(line, result, system);
            line.Append(", which makes ");
            Substitute(line, step);
            return line.ToString();
        }
        if (equation.Kind == EquationKind.Sum) line.AppendJoin(" + ", step.Values.Select(value => Bracketed(value.Si)));
        else Substitute(line, step);
        line.Append(" = ");
        Result(line, result, system);
        return line.ToString();
    }

    static void Result(StringBuilder line, StepValue result, UnitSystem system)
    {
        line.Append(Number(result.Si));
        if (result.Unit == SymbolUnit.Plain) return;
        line.Append(' ').Append(result.Unit.Si);
        var (value, unit) = result.Unit.Write(result.Si, system);
        if (unit != result.Unit.Si) line.Append(" = ").Append(Number(value)).Append(' ').Append(unit);
    }

    static void Substitute(StringBuilder line, ExplanationStep step)
    {
        var rest = step.Equation.Template.AsSpan();
        for (var open = rest.IndexOf('{'); open >= 0; open = rest.IndexOf('{'))
        {
            var close = rest.IndexOf('}');
            line.Append(rest[..open]).Append(Bracketed(Find(step, rest[(open + 1)..close])));
            rest = rest[(close + 1)..];
        }
        line.Append(rest);
    }

    static double Find(ExplanationStep step, ReadOnlySpan<char> symbol)
    {
        foreach (var value in step.Values)
            if (symbol.SequenceEqual(value.Symbol)) return value.Si;
        return step.Result.Si;
    }

    static string Bracketed(double number) => number < 0 ? $"({Number(number)})" : Number(number);

    static string Number(double number)
    {
        var text = number.ToString("G6", CultureInfo.InvariantCulture);
        var mark = text.IndexOf('E', StringComparison.Ordinal);
        return mark < 0 ? text : string.Create(CultureInfo.InvariantCulture, $"{text.AsSpan(0, mark)}e{int.Parse(text.AsSpan(mark + 1), CultureInfo.InvariantCulture)}");
    }
}
