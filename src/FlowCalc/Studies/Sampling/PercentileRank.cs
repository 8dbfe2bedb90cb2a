namespace FlowCalc.Studies.Sampling;

/// <summary>Between which samples a percentile lies.</summary>
/// <param name="Part">The part of the samples below it, 0 to 1.</param>
/// <param name="Rank">Its place among the sorted samples, from 1, not whole: (n + 1/3)·part + 1/3.</param>
/// <param name="Below">The sample at the whole part of that place; at either end the last one there.</param>
/// <param name="Above">The sample behind it.</param>
public readonly record struct PercentileRank(double Part, double Rank, double Below, double Above)
{
    /// <summary>The place of a percentile.</summary>
    /// <param name="sorted">Samples, rising, one or more.</param>
    /// <param name="part">The part, 0 to 1.</param>
    /// <remarks>Definition 8 of R. J. Hyndman, Y. Fan, American Statistician 50 (1996) 361–365.</remarks>
    internal static PercentileRank Of(double[] sorted, double part)
    {
        var rank = (sorted.Length + 1 / 3d) * part + 1 / 3d;
        var whole = (int)rank;
        return new(part, rank, sorted[Math.Clamp(whole - 1, 0, sorted.Length - 1)], sorted[Math.Clamp(whole, 0, sorted.Length - 1)]);
    }
}
