namespace FlowCalc.Studies.Sampling;

/// <summary>What a first-order index is estimated from. Sums of squares are about means, in the figure's SI unit squared.</summary>
/// <param name="Samples">Samples that have the figure, n.</param>
/// <param name="Bins">Bins of the input that hold samples, B.</param>
/// <param name="Between">Sum of squares between the means of the bins, SSB.</param>
/// <param name="Whole">Sum of squares of all, SST.</param>
/// <param name="Differences">Sum of squared differences, from their mean, of the indices with one group of samples left out.</param>
public readonly record struct IndexParts(int Samples, int Bins, double Between, double Whole, double Differences)
{
    /// <summary>Mean square within the bins, MSW.</summary>
    public double Within => Math.Max(Whole - Between, 0) / (Samples - Bins);

    /// <summary>The index: (SSB − (B − 1)·MSW) / (SST + MSW).</summary>
    public double Index => (Between - (Bins - 1) * Within) / (Whole + Within);
}
