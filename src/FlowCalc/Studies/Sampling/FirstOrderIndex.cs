namespace FlowCalc.Studies.Sampling;

/// <summary>The part of a figure's variance that one input alone explains: Var(E[y | x]) / Var(y), the first-order index of Sobol'.</summary>
/// <param name="Value">The estimate; may lie below 0 by chance where the input matters little.</param>
/// <param name="StandardError">Its standard error.</param>
/// <remarks>
/// From the samples at hand, without further ones (given data: E. Plischke, E. Borgonovo, C. L. Smith, Eur. J. Oper. Res. 226 (2013) 536–550, from memory). The samples are put into bins of equal chance of the input, about √n of
/// them, and ω² = (SSB − (B − 1)·MSW) / (SST + MSW) takes off what the means of bins would differ by without any effect (W. L. Hays, Statistics, 1963, from memory).
/// What the figure changes by within a bin counts to the other inputs, so that the index comes out too low, by about 1/B² of it for a uniform input.
/// The standard error is the jackknife's over 20 groups of samples, each left out once (B. Efron, The Jackknife, the Bootstrap and Other Resampling Plans, SIAM 1982, from memory).
/// </remarks>
public readonly record struct FirstOrderIndex(double Value, double StandardError)
{
    /// <summary>Groups of samples that the jackknife leaves out in turn.</summary>
    internal const int Groups = 20;

    const double Still = 1e-12;

    /// <summary>What it was estimated from.</summary>
    public IndexParts Parts { get; init; }

    /// <summary>Number of bins for so many samples, 8 to 128.</summary>
    internal static int Bins(int samples) => Math.Clamp((int)Math.Sqrt(samples), 8, 128);

    /// <summary>Estimates the index of one input.</summary>
    /// <param name="bin">Bin of the input by sample, 0 to <paramref name="bins"/> − 1.</param>
    /// <param name="bins">Number of bins, 2 or more.</param>
    /// <param name="figure">The figure by sample; samples without a finite one count for nothing.</param>
    /// <returns>NaN where too few samples have a figure or the figure does not change.</returns>
    internal static FirstOrderIndex Of(ReadOnlySpan<int> bin, int bins, ReadOnlySpan<double> figure)
    {
        var (count, mean) = MeanOf(figure);
        if (count < 4 * bins) return new(double.NaN, double.NaN);
        Span<double> sums = new double[Groups * bins], squares = stackalloc double[Groups];
        Span<int> counts = new int[Groups * bins];
        for (var i = 0; i < figure.Length; i++)
        {
            if (!double.IsFinite(figure[i])) continue;
            // About the mean, so that squares do not cancel.
            var (off, group) = (figure[i] - mean, (int)((long)i * Groups / figure.Length));
            sums[group * bins + bin[i]] += off;
            counts[group * bins + bin[i]]++;
            squares[group] += off * off;
        }
        double square = 0;
        foreach (var one in squares) square += one;
        // What moves by rounding alone does not move.
        if (!(Math.Sqrt(square / count) > Still * Math.Abs(mean))) return new(double.NaN, double.NaN);
        var parts = Without(-1, bins, sums, counts, squares);
        Span<double> left = stackalloc double[Groups];
        double middle = 0, error = 0;
        for (var group = 0; group < Groups; group++) middle += (left[group] = Without(group, bins, sums, counts, squares).Index) / Groups;
        foreach (var one in left) error += (one - middle) * (one - middle);
        return new(parts.Index, Math.Sqrt(error * (Groups - 1) / Groups)) { Parts = parts with { Differences = error } };
    }

    static (int Count, double Mean) MeanOf(ReadOnlySpan<double> figure)
    {
        var count = 0;
        double sum = 0;
        foreach (var value in figure)
        {
            if (!double.IsFinite(value)) continue;
            count++;
            sum += value;
        }
        return (count, sum / count);
    }

    static IndexParts Without(int omitted, int bins, ReadOnlySpan<double> sums, ReadOnlySpan<int> counts, ReadOnlySpan<double> squares)
    {
        int all = 0, filled = 0;
        double total = 0, square = 0, between = 0;
        for (var bin = 0; bin < bins; bin++)
        {
            double sum = 0;
            var count = 0;
            for (var group = 0; group < Groups; group++)
            {
                if (group == omitted) continue;
                sum += sums[group * bins + bin];
                count += counts[group * bins + bin];
            }
            if (count == 0) continue;
            filled++;
            all += count;
            total += sum;
            between += sum * sum / count;
        }
        for (var group = 0; group < Groups; group++)
            if (group != omitted) square += squares[group];
        var correction = total * total / all;
        between -= correction;
        square -= correction;
        return new(all, filled, between, square, 0);
    }
}
