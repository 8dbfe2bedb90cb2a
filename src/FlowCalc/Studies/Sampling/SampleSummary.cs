using MathNet.Numerics.Statistics;

namespace FlowCalc.Studies.Sampling;

/// <summary>How one figure of an answer is spread over the samples. What an instant that never comes has to do with is null.</summary>
/// <param name="Design">The figure of the design itself; null where it has none.</param>
/// <param name="Count">Samples that have the figure.</param>
/// <param name="Never">Of them, samples in which the instant never comes, which counts as later than any.</param>
/// <param name="Mean">Mean; null where an instant never comes in some sample.</param>
/// <param name="StandardDeviation">Standard deviation (of n − 1); null where an instant never comes in some sample, or of fewer than two.</param>
/// <param name="Least">Least.</param>
/// <param name="P05">What 5 % lie below.</param>
/// <param name="P50">Median.</param>
/// <param name="P95">What 95 % lie below.</param>
/// <param name="Greatest">Greatest.</param>
public sealed record SampleSummary(
    double? Design, int Count, int Never, double? Mean, double? StandardDeviation, double? Least, double? P05, double? P50, double? P95, double? Greatest)
{
    /// <summary>Between which samples the 5 % lie; null without samples.</summary>
    public PercentileRank? Rank05 { get; init; }

    /// <summary>Between which samples the median lies; null without samples.</summary>
    public PercentileRank? Rank50 { get; init; }

    /// <summary>Between which samples the 95 % lie; null without samples.</summary>
    public PercentileRank? Rank95 { get; init; }

    /// <summary>Sums a figure up.</summary>
    /// <param name="design">The figure of the design; NaN for none, infinite for an instant that never comes.</param>
    /// <param name="values">The figure by sample: NaN where a sample has none, infinite for an instant that never comes.</param>
    /// <remarks>Percentiles by definition 8 of R. J. Hyndman, Y. Fan, American Statistician 50 (1996) 361–365: near the median of what they would be, whatever the distribution.</remarks>
    internal static SampleSummary Of(double design, double[] values)
    {
        var sorted = Array.FindAll(values, value => !double.IsNaN(value));
        Array.Sort(sorted);
        var never = 0;
        while (never < sorted.Length && double.IsPositiveInfinity(sorted[^(never + 1)])) never++;
        var (mean, deviation) = never == 0 && sorted.Length > 0 ? ArrayStatistics.MeanStandardDeviation(sorted) : (double.NaN, double.NaN);
        return new(
            Told(design), sorted.Length, never, Told(mean), Told(deviation), At(sorted, 0), At(sorted, 0.05), At(sorted, 0.5), At(sorted, 0.95), At(sorted, 1))
        {
            Rank05 = RankOf(sorted, 0.05),
            Rank50 = RankOf(sorted, 0.5),
            Rank95 = RankOf(sorted, 0.95),
        };
    }

    static double? At(double[] sorted, double part) => sorted.Length == 0 ? null : Told(SortedArrayStatistics.Quantile(sorted, part));

    static PercentileRank? RankOf(double[] sorted, double part) => sorted.Length == 0 ? null : PercentileRank.Of(sorted, part);

    static double? Told(double value) => double.IsFinite(value) ? value : null;
}
