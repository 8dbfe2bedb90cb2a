using CsCheck;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Tests.Properties.Studies;

public class LatinHypercubeTests
{
    static readonly Gen<(int Samples, ulong Seed)> Any = Gen.Select(Gen.Int[1, 3_000], Gen.ULong);

    [Fact]
    public void Every_dimension_has_one_sample_in_each_stratum() => Any.Sample(one =>
    {
        var hypercube = new LatinHypercube(one.Samples, 3, one.Seed);
        for (var dimension = 0; dimension < 3; dimension++)
        {
            var isTaken = new bool[one.Samples];
            for (var index = 0; index < one.Samples; index++)
            {
                var at = hypercube.At(index, dimension);
                var stratum = (int)(at * one.Samples);
                if (!(at > 0 && at < 1) || stratum != hypercube.Stratum(index, dimension) || isTaken[stratum]) return false;
                isTaken[stratum] = true;
            }
        }
        return true;
    }, iter: 300);

    [Fact]
    public void Sample_is_the_same_whatever_was_asked_before() => Any.Sample(one =>
    {
        LatinHypercube first = new(one.Samples, 5, one.Seed), second = new(one.Samples, 2, one.Seed);
        var last = one.Samples - 1;
        var forward = (first.At(0, 0), first.At(last, 1));
        var backward = second.At(last, 1);
        return forward == (second.At(0, 0), backward);
    }, iter: 1_000);

    [Fact]
    public void Last_stratum_of_the_most_samples_stays_below_one()
    {
        var hypercube = new LatinHypercube(LatinHypercube.MostSamples, 1, 1);
        for (var index = 0; index < LatinHypercube.MostSamples; index += 97) Assert.InRange(hypercube.At(index, 0), double.Epsilon, 1 - 1e-16);
    }

    // Of 2000 samples a correlation of independent dimensions is normal with a deviation of 0.022.
    [Fact]
    public void Dimensions_and_seeds_are_not_correlated()
    {
        const int n = 2_000;
        LatinHypercube one = new(n, 4, 1), other = new(n, 4, 2);
        double[] Values(LatinHypercube hypercube, int dimension) => [.. Enumerable.Range(0, n).Select(index => hypercube.At(index, dimension))];

        for (var dimension = 0; dimension < 4; dimension++)
        {
            Assert.Equal(0, MathNet.Numerics.Statistics.Correlation.Pearson(Values(one, dimension), Values(one, (dimension + 1) % 4)), tolerance: 0.09);
            Assert.Equal(0, MathNet.Numerics.Statistics.Correlation.Pearson(Values(one, dimension), Values(other, dimension)), tolerance: 0.09);
        }
    }

    // 20 equal bins of the place within a stratum: chi-square of 19 degrees is below 43.8 in 999 of 1000 cases.
    [Fact]
    public void Places_within_strata_are_even()
    {
        const int n = 20_000, bins = 20;
        var hypercube = new LatinHypercube(n, 1, 3);
        var counts = new int[bins];
        for (var index = 0; index < n; index++) counts[(int)((hypercube.At(index, 0) * n - hypercube.Stratum(index, 0)) * bins)]++;

        Assert.InRange(counts.Sum(count => Math.Pow(count - n / bins, 2) / (n / bins)), 0, 43.8);
    }
}
