using FlowCalc.Explanations;

namespace FlowCalc.Tests.Explanations;

/// <summary>Does every step of an explanation again, from its values and the form of its equation.</summary>
internal static class RedoneByHand
{
    // What the engine itself leaves open: the fast forms of a gas's state, and steps of its searches.
    static double Tolerance(string id) => id switch
    {
        "friction-slope-at-4000" => 1e-6,
        "lossless-step" or "run-balance" => 1e-6,
        "nozzle-expansion" or "nozzle-delayed-expansion" => 1e-4,
        _ => 1e-9,
    };

    /// <summary>Asserts that every step holds; those that a filter leaves out apart.</summary>
    public static void Check(IEnumerable<ExplanationStep> steps, Func<ExplanationStep, bool>? isChecked = null)
    {
        foreach (var step in steps)
        {
            if (isChecked?.Invoke(step) == false) continue;
            var (left, right) = HandFormulas.Sides(step.Equation.Id, [.. step.Values.Select(value => (value.Symbol, value.Si))], step.Result.Si);
            Assert.True(double.IsFinite(left), Told(step, left, right));
            Assert.True(Math.Abs(left - right) <= Tolerance(step.Equation.Id) * Size(step, left), Told(step, left, right));
            if (step.Equation.Kind != EquationKind.Sum) CheckForm(step);
        }
    }

    // The text of the form, read as a formula, with the numbers of the step.
    static void CheckForm(ExplanationStep step)
    {
        var (left, right) = FormText.Sides(step.Equation.Form, step.Values.Append(step.Result).ToDictionary(value => value.Symbol, value => value.Si, StringComparer.Ordinal));
        var tolerance = Math.Max(Tolerance(step.Equation.Id), 1e-9);
        Assert.True(Math.Abs(left - right) <= tolerance * Size(step, Math.Max(Math.Abs(left), Math.Abs(right))), "As text: " + Told(step, left, right));
    }

    /// <summary>Asserts that the text of a worked line, whose numbers have six digits and those of pressures eight, comes out at its result.</summary>
    public static void CheckWorked(ExplanationStep step, string worked)
    {
        var sides = worked.Split(", with ")[0].Split(" = ");
        var with = worked.Contains(", with ", StringComparison.Ordinal) ? ", with " + worked.Split(", with ")[1] : "";
        var (left, right) = step.Equation.Kind == EquationKind.Implicit
            ? FormText.Sides(worked.Split(", which makes ")[1], new Dictionary<string, double>())
            : FormText.Sides($"{sides[2].Split(' ')[0]} = {sides[1]}{with}", new Dictionary<string, double>());
        Assert.True(Math.Abs(left - right) <= 1e-4 * Size(step, Math.Max(Math.Abs(left), Math.Abs(right))), $"{worked}: {left} against {right}");
    }

    // A difference or a sum of both signs keeps the digits of what it is made of.
    static double Size(ExplanationStep step, double left)
    {
        var unit = step.Result.Unit;
        var own = StepSize.Of(step.Equation.Id, unit.Si, step.Values.Select(value => value.Si));
        return step.Values.Where(value => value.Unit.Si.StartsWith(unit.Si, StringComparison.Ordinal) && unit.Si != "1").Select(value => Math.Abs(value.Si)).Append(Math.Abs(left)).Append(own).Max();
    }

    static string Told(ExplanationStep step, double left, double right) =>
        FormattableString.Invariant($"{step.Place} {step.Id}, {step.Part}: {step.Equation.Id}, {left:R} against {right:R}; {string.Join(", ", step.Values.Select(value => $"{value.Symbol} {value.Si:R}"))}");
}
