using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Seven equal steps over the values of a drawing, from little to much.</summary>
sealed class ColourScale
{
    /// <summary>How many steps there are.</summary>
    public const int Steps = 7;

    const int MostDecimals = 15;
    const double Equal = 1e-9;

    readonly double low, high;

    ColourScale(string title, double low, double high, ScaleUnit unit)
    {
        (Title, this.low, this.high) = (title, low, high);
        HasOneStep = !(high - low > Equal * Math.Max(Math.Abs(low), Math.Abs(high)));
        // Digits that tell a step from the next, and one more where a step is few units of the last.
        var step = unit.Factor * (high - low) / Steps;
        var decimals = (int)Math.Clamp(Math.Ceiling(0.7 - Math.Log10(HasOneStep ? Math.Max(Math.Abs(unit.Factor * low) / 100, 1e-12) : step)), unit.LeastDecimals, MostDecimals);
        Ranges = HasOneStep
            ? [$"{unit.Number(low, decimals)} {unit.Symbol}"]
            : [.. Enumerable.Range(0, Steps).Select(at => $"{unit.Number(Bound(at), decimals)} to {unit.Number(Bound(at + 1), decimals)} {unit.Symbol}")];
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
    /// <param name="unit">The unit in which its bounds are written.</param>
    public static ColourScale? Of(string title, IEnumerable<double> values, ScaleUnit unit)
    {
        var (least, most) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var value in values) (least, most) = (Math.Min(least, value), Math.Max(most, value));
        return least <= most ? new(title, least, most, unit) : null;
    }

    /// <summary>The step whose range holds a value, 0 to 6; a value on the bound of two belongs to the higher.</summary>
    public int Step(double value) => HasOneStep ? Steps / 2 : Math.Clamp((int)Math.Floor((value - low) / (high - low) * Steps), 0, Steps - 1);

    /// <summary>The colour of a step.</summary>
    public static Ink InkOf(int step) => Ink.Step1 + step;

    /// <summary>Lowest value of a step; highest of the one before it.</summary>
    public double Bound(int step) => low + (high - low) * step / Steps;
}

/// <summary>The unit of a scale.</summary>
/// <param name="Factor">Units in an SI unit.</param>
/// <param name="Symbol">Its symbol.</param>
/// <param name="LeastDecimals">Decimals that its numbers have at least.</param>
/// <param name="IsSigned">Whether a number over 0 has a sign.</param>
sealed record ScaleUnit(double Factor, string Symbol, int LeastDecimals = 0, bool IsSigned = false)
{
    /// <summary>Writes a value.</summary>
    /// <param name="value">The value, SI.</param>
    /// <param name="decimals">Its decimals.</param>
    public string Number(double value, int decimals)
    {
        var number = (Factor * value).ToString("F" + decimals, System.Globalization.CultureInfo.InvariantCulture);
        var isZero = number.AsSpan().IndexOfAnyExcept("-0.") < 0;
        return isZero ? number.TrimStart('-') : number[0] == '-' ? $"\u2212{number[1..]}" : IsSigned ? $"+{number}" : number;
    }
}
