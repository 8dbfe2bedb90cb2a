using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Says which input matters most.</summary>
public static class SensitivityWording
{
    // Two standard errors: what is closer is told apart by chance alone one time in twenty.
    const double Apart = 2;

    /// <summary>The sentence of a figure.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="inputs">Its inputs, by what they explain, most first.</param>
    internal static string Of(Figure figure, ImmutableArray<InputIndex> inputs)
    {
        var what = Named(figure);
        if (inputs.IsEmpty) return $"Nothing can be said about what moves {what}: it does not move, or too few samples have it.";
        var first = inputs[0];
        if (!(first.Index.Value > Apart * first.Index.StandardError)) return $"No single input stands out in what moves {what}: {first.Path} explains {Told(first.Index)} of its variance.";
        var alike = inputs.Skip(1).TakeWhile(other => first.Index.Value - other.Index.Value <= Apart * Math.Sqrt(Square(first.Index) + Square(other.Index))).Select(other => other.Path).ToArray();
        var sentence = $"{first.Path} matters most to {what}: it alone explains {Told(first.Index)} of its variance";
        return alike.Length switch
        {
            0 => sentence + ".",
            > 3 => $"{sentence}; {alike.Length} others may matter as much.",
            _ => $"{sentence}; {string.Join(", ", alike)} may matter as much.",
        };
    }

    static double Square(FirstOrderIndex index) => index.StandardError * index.StandardError;

    static string Told(FirstOrderIndex index) => string.Create(CultureInfo.InvariantCulture, $"{100 * index.Value:0.#} % (standard error {100 * index.StandardError:0.#} %)");

    /// <summary>A main figure in words, such as <c>the whole flow</c>.</summary>
    /// <param name="figure">A figure that a study has sensitivities of.</param>
    /// <exception cref="ArgumentOutOfRangeException">The figure is no main one.</exception>
    public static string Named(Figure figure) => figure switch
    {
        Figure.MassFlow => "the whole flow",
        Figure.LowestDeviation => "the share of the worst-fed nozzle",
        Figure.Time95 => "the time until 95 % of the contents are out",
        Figure.LastArrival => "the arrival at the last nozzle",
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "No main figure."),
    };
}
