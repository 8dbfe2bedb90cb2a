using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Seven equal steps over the values of a drawing, from little to much.</summary>
sealed class ColourScale
{
    /// <summary>How many steps there are.</summary>
    public const int Steps = 7;

    const int MostDigits = 9;
    const double Equal = 1e-9;

    readonly double low, high;

    ColourScale(string title, double low, double high, Func<double, int, string> text)
    {
        (Title, this.low, this.high) = (title, low, high);
        HasOneStep = !(high - low > Equal * Math.Max(Math.Abs(low), Math.Abs(high)));
        Ranges = HasOneStep ? [text(low, 3)] : Bounds(text);
    }

    /// <summary>What it tells.</summary>
    public string Title { get; }

    /// <summary>Whether all values are the same, so that the middle step stands for all.</summary>
    public bool HasOneStep { get; }

    /// <summary>The range of each step in words, the lowest first; one where all values are the same.</summary>
    public ImmutableArray<string> Ranges { get; }

    /// <summary>The scale of values; null where there are none.</summary>
    /// <param name="title">What it tells.</param>
    /// <param name="values">The values.</param>
    /// <param name="text">Writes a value with so many significant digits.</param>
    public static ColourScale? Of(string title, IEnumerable<double> values, Func<double, int, string> text)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values) (least, most) = (Math.Min(least, value), Math.Max(most, value));
        return least <= most ? new(title, least, most, text) : null;
    }

    /// <summary>The step whose range holds a value, 0 to 6; a value on the bound of two belongs to the higher.</summary>
    public int Step(double value) => HasOneStep ? Steps / 2 : Math.Clamp((int)Math.Floor((value - low) / (high - low) * Steps), 0, Steps - 1);

    /// <summary>The colour of a step.</summary>
    public static Ink InkOf(int step) => Ink.Step1 + step;

    // As many digits as keep the bounds apart.
    ImmutableArray<string> Bounds(Func<double, int, string> text)
    {
        for (var digits = 3; ; digits++)
        {
            string[] bounds = [.. Enumerable.Range(0, Steps + 1).Select(at => text(low + (high - low) * at / Steps, digits))];
            if (digits < MostDigits && bounds.Distinct(StringComparer.Ordinal).Count() <= Steps) continue;
            return [.. Enumerable.Range(0, Steps).Select(at => $"{bounds[at]} to {bounds[at + 1]}")];
        }
    }
}
