using System.Globalization;
using System.Text;
using FlowCalc.Quantities;

namespace FlowCalc.Explanations;

/// <summary>Writes a step with its numbers in place of the symbols, six digits each and of pressures eight, in SI; the result in the answer's units behind it.</summary>
public static class WorkedLine
{
    const int Digits = 6, MoreDigits = 8;

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
            Substitute(line, equation.Template, step);
            return line.ToString();
        }
        if (equation.Kind == EquationKind.Sum) line.AppendJoin(" + ", step.Values.Select(Bracketed).DefaultIfEmpty("0"));
        else Substitute(line, equation.Template, step);
        line.Append(" = ");
        Result(line, result, system);
        if (equation.With.Length == 0) return line.ToString();
        line.Append(", with ");
        Substitute(line, equation.With, step);
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

    static void Substitute(StringBuilder line, string template, ExplanationStep step)
    {
        var rest = template.AsSpan();
        for (var open = rest.IndexOf('{'); open >= 0; open = rest.IndexOf('{'))
        {
            var close = rest.IndexOf('}');
            var number = Bracketed(Find(step, rest[(open + 1)..close]));
            line.Append(rest[..open]);
            rest = rest[(close + 1)..];
            // A power of a number with an exponent would read as a power of the exponent.
            if (rest is ['²' or '³' or '^', ..] && number.Contains('e', StringComparison.Ordinal) && number[0] != '(') line.Append('(').Append(number).Append(')');
            else line.Append(number);
        }
        line.Append(rest);
    }

    static StepValue Find(ExplanationStep step, ReadOnlySpan<char> symbol)
    {
        foreach (var value in step.Values)
            if (symbol.SequenceEqual(value.Symbol)) return value;
        return step.Result;
    }

    static string Bracketed(StepValue value)
    {
        // What stands in differences needs more digits.
        var text = Number(value.Si, value.Unit.Si is "Pa" or "Pa(a)" or "J/kg" ? MoreDigits : Digits);
        return value.Si < 0 ? $"({text})" : text;
    }

    static string Number(double number, int digits = Digits)
    {
        var text = number.ToString(FormattableString.Invariant($"G{digits}"), CultureInfo.InvariantCulture);
        var mark = text.IndexOf('E', StringComparison.Ordinal);
        return mark < 0 ? text : string.Create(CultureInfo.InvariantCulture, $"{text.AsSpan(0, mark)}e{int.Parse(text.AsSpan(mark + 1), CultureInfo.InvariantCulture)}");
    }
}
