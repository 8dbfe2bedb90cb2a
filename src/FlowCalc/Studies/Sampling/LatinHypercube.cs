using System.Runtime.Intrinsics;

namespace FlowCalc.Studies.Sampling;

/// <summary>A Latin hypercube: of n samples every dimension has exactly one in each of n equal strata, at a random place in it. A sample is a pure function of seed, number of samples and index.</summary>
/// <remarks>Source: M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239–245. Strata of different dimensions are paired at random.</remarks>
internal sealed class LatinHypercube
{
    /// <summary>Most samples, 2²⁰: beyond, a place in the last stratum may round to 1.</summary>
    public const int MostSamples = 1 << 20;

    // Half a step off either end, so that 0 and 1 never come.
    const double Step = 1.0 / 4_294_967_296;

    readonly ulong seed;
    readonly KeyedPermutation[] strata;

    /// <summary>A hypercube.</summary>
    /// <param name="samples">Number of samples, 1 to <see cref="MostSamples"/>.</param>
    /// <param name="dimensions">Number of dimensions, 1 or more.</param>
    /// <param name="seed">Any number.</param>
    public LatinHypercube(int samples, int dimensions, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(samples, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(samples, MostSamples);
        ArgumentOutOfRangeException.ThrowIfLessThan(dimensions, 1);
        (Samples, this.seed) = (samples, seed);
        strata = new KeyedPermutation[dimensions];
        for (var dimension = 0; dimension < dimensions; dimension++) strata[dimension] = new(samples, seed, (uint)dimension);
    }

    /// <summary>Number of samples.</summary>
    public int Samples { get; }

    /// <summary>Number of dimensions.</summary>
    public int Dimensions => strata.Length;

    /// <summary>Which of the n strata of a dimension a sample lies in, 0 to n − 1.</summary>
    /// <param name="index">The sample.</param>
    /// <param name="dimension">The dimension.</param>
    public int Stratum(int index, int dimension) => strata[dimension][index];

    /// <summary>Where a sample lies in a dimension, over 0 and below 1.</summary>
    /// <param name="index">The sample.</param>
    /// <param name="dimension">The dimension.</param>
    public double At(int index, int dimension)
    {
        var within = (Philox.Block(Vector128.Create((uint)index, (uint)dimension, 0u, 0u), seed)[0] + 0.5) * Step;
        return (Stratum(index, dimension) + within) / Samples;
    }
}
