namespace FlowCalc.Studies.Sampling;

/// <summary>The values that one input may have, SI.</summary>
public sealed record Distribution
{
    /// <summary>Where a normal is cut to either side, in standard deviations: 63 of a million values lie beyond, and its standard deviation falls by 0.05 %.</summary>
    public const double Cut = 4;

    static readonly double BelowCut = MathNet.Numerics.Distributions.Normal.CDF(0, 1, -Cut);

    Distribution(DistributionShape shape, double design, double low, double high) => (Shape, Design, Low, High) = (shape, design, low, high);

    /// <summary>How it is spread.</summary>
    public DistributionShape Shape { get; }

    /// <summary>The value of the design; of a normal the middle, of a triangle the top.</summary>
    public double Design { get; }

    /// <summary>Least value.</summary>
    public double Low { get; }

    /// <summary>Greatest value.</summary>
    public double High { get; }

    /// <summary>Standard deviation of a normal before it is cut; 0 for the others.</summary>
    public double Sigma { get; private init; }

    /// <summary>A normal, cut four standard deviations to either side: values are drawn between the cuts in proportion, none is moved onto them.</summary>
    /// <param name="design">The middle.</param>
    /// <param name="sigma">Standard deviation, over 0.</param>
    public static Distribution Normal(double design, double sigma)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(sigma);
        return new(DistributionShape.Normal, design, design - Cut * sigma, design + Cut * sigma) { Sigma = sigma };
    }

    /// <summary>Every value between two ends alike.</summary>
    /// <param name="design">The value of the design, between the ends or one of them.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end, over the lower.</param>
    public static Distribution Uniform(double design, double low, double high) => Between(DistributionShape.Uniform, design, low, high);

    /// <summary>A triangle with its top at the design value.</summary>
    /// <param name="design">The top, between the ends or one of them.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end, over the lower.</param>
    public static Distribution Triangular(double design, double low, double high) => Between(DistributionShape.Triangular, design, low, high);

    /// <summary>The value that a part of all values lies below.</summary>
    /// <param name="part">The part, over 0 and below 1.</param>
    public double At(double part) => Shape switch
    {
        DistributionShape.Normal => MathNet.Numerics.Distributions.Normal.InvCDF(Design, Sigma, BelowCut + part * (1 - 2 * BelowCut)),
        DistributionShape.Uniform => Low + part * (High - Low),
        _ => MathNet.Numerics.Distributions.Triangular.InvCDF(Low, High, Design, part),
    };

    static Distribution Between(DistributionShape shape, double design, double low, double high)
    {
        if (!(low < high && low <= design && design <= high)) throw new ArgumentOutOfRangeException(nameof(design), design, "The lower end, the design value and the upper end rise.");
        return new(shape, design, low, high);
    }
}
