using System.Text.Json;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Tests.Explanations;

namespace FlowCalc.Api.Tests.Explanations;

/// <summary>The steps of an explanation as a caller gets them, done again from what the answer alone says.</summary>
static class ToldSteps
{
    /// <summary>Every step of an explanation.</summary>
    public static IReadOnlyList<JsonElement> Of(JsonElement explanation)
    {
        List<JsonElement> steps = [];
        foreach (var parts in (string[])["cases", "layouts"])
            if (explanation.TryGetProperty(parts, out var all))
                foreach (var one in all.EnumerateArray()) steps.AddRange(one.GetProperty("steps").EnumerateArray());
        if (explanation.TryGetProperty("steps", out var own)) steps.AddRange(own.EnumerateArray());
        return steps;
    }

    /// <summary>The number of a value or a result in SI.</summary>
    public static double Si(this JsonElement value) => SiUnits.Of(value.Value(), value.GetProperty("unit").GetString()!);

    /// <summary>A field's text.</summary>
    public static string? Word(this JsonElement step, string field) => step.GetProperty(field).GetString();

    /// <summary>Does every step again by the form of its equation, and holds every equation used against those listed.</summary>
    public static void Redo(JsonElement explanation)
    {
        var forms = explanation.GetProperty("equations").EnumerateArray().ToDictionary(equation => equation.Word("id")!, equation => equation.Word("form")!);
        var steps = Of(explanation);
        Assert.Equal(forms.Keys.Order(StringComparer.Ordinal), steps.Select(step => step.Word("equation")!).Distinct().Order(StringComparer.Ordinal));
        foreach (var step in steps)
        {
            var form = forms[step.Word("equation")!];
            var values = step.GetProperty("values").EnumerateArray().ToArray();
            var result = step.GetProperty("result");
            var (left, right) = form.Contains('Σ', StringComparison.Ordinal)
                ? (result.Si(), values.Sum(Si))
                : FormText.Sides(form, values.Append(result).ToDictionary(value => value.Word("symbol")!, Si, StringComparer.Ordinal));
            var size = values.Where(value => IsOfTheKindOf(value, result)).Select(value => Math.Abs(value.Si())).Append(Math.Abs(left)).Append(Math.Abs(right))
                .Append(StepSize.Of(step.Word("equation")!, result.Word("unit")!, values.Select(Si))).Max();
            // What an interpolated table of a gas leaves open in its own numbers is the widest.
            var tolerance = step.Word("equation") is "nozzle-expansion" or "nozzle-delayed-expansion" ? 1e-4 : step.Word("equation") is "lossless-step" or "run-balance" ? 1e-6 : 1e-8;
            Assert.True(Math.Abs(left - right) <= tolerance * size, $"{step.GetRawText()}: {left} against {right}");
        }
    }

    // A difference of two keeps the digits of the two.
    static bool IsOfTheKindOf(JsonElement value, JsonElement result) =>
        result.Word("unit") is not "1" && (value.Word("unit") == result.Word("unit") || value.Word("unit")!.StartsWith(result.Word("unit")!, StringComparison.Ordinal));
}
