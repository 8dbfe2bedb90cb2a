using MathNet.Numerics.Distributions;

namespace FlowCalc.Studies.Sampling;

/// <summary>How often something was so, and between what ends its chance lies with a confidence of 95 %.</summary>
/// <param name="Count">Samples in which it was so.</param>
/// <param name="Part">Their part of all, 0 to 1.</param>
/// <param name="Low">Lower end of the chance, 0 to 1.</param>
/// <param name="High">Upper end, 0 to 1.</param>
public readonly record struct Chance(int Count, double Part, double Low, double High)
{
    /// <summary>Standard score of a confidence of 95 %.</summary>
    internal static readonly double Score = Normal.InvCDF(0, 1, 0.975);

    /// <summary>The chance after so many samples.</summary>
    /// <param name="count">Samples in which it was so, 0 to all.</param>
    /// <param name="samples">All samples, 1 or more.</param>
    /// <remarks>Source: E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209–212 (from memory). It takes the samples as independent; those of a Latin hypercube rather err less.</remarks>
    internal static Chance Of(int count, int samples)
    {
        double n = samples, part = count / n, square = Score * Score;
        var middle = (part + square / (2 * n)) / (1 + square / n);
        var half = Score / (1 + square / n) * Math.Sqrt(part * (1 - part) / n + square / (4 * n * n));
        // At either end the interval reaches it, but for rounding.
        return new(count, part, count == 0 ? 0 : Math.Max(middle - half, 0), count == samples ? 1 : Math.Min(middle + half, 1));
    }
}
