using FlowCalc.Studies.Sampling;

namespace FlowCalc.Tests.ClosedForms.Studies;

/// <summary>Models whose indices can be derived.</summary>
public class FirstOrderIndexTests
{
    const int Samples = 10_000;

    // y = sin x1 + a sin² x2 + b x3⁴ sin x1 on (−π, π)³ (T. Ishigami, T. Homma, ISUMA 1990). With E[x⁴] = π⁴/5 and E[x⁸] = π⁸/9:
    // E[y | x1] = sin x1 (1 + b π⁴/5) + a/2, variance ½ (1 + b π⁴/5)²; E[y | x2] = a sin² x2, variance a²/8; E[y | x3] = a/2, variance 0;
    // of the whole ½ + a²/8 + b π⁴/5 + b² π⁸/18.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Ishigami_function_has_the_indices_of_its_closed_form(ulong seed)
    {
        const double a = 7, b = 0.1;
        var fourth = Math.Pow(Math.PI, 4);
        var whole = 0.5 + a * a / 8 + b * fourth / 5 + b * b * fourth * fourth / 18;
        double[] exact = [0.5 * Math.Pow(1 + b * fourth / 5, 2) / whole, a * a / 8 / whole, 0];

        var found = Indices(seed, 3, u =>
        {
            double x1 = Math.PI * (2 * u[0] - 1), x2 = Math.PI * (2 * u[1] - 1), x3 = Math.PI * (2 * u[2] - 1);
            return Math.Sin(x1) + a * Math.Pow(Math.Sin(x2), 2) + b * Math.Pow(x3, 4) * Math.Sin(x1);
        });

        Assert.Equal(0.3139, exact[0], tolerance: 0.00005);
        Assert.Equal(0.4424, exact[1], tolerance: 0.00005);
        AssertWithin(exact, found);
        Assert.All(found, index => Assert.InRange(index.StandardError, 1e-4, 0.02));
    }

    // Of a sum of uniform inputs each explains the square of its slope, over that of all.
    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void Linear_model_has_indices_in_proportion_to_the_squares_of_its_slopes(ulong seed)
    {
        double[] slopes = [4, -3, 2, 1, 0, 0.1];
        var whole = slopes.Sum(slope => slope * slope);

        var found = Indices(seed, slopes.Length, u => 1_000 + slopes.Zip(u, (slope, x) => slope * x).Sum());

        AssertWithin([.. slopes.Select(slope => slope * slope / whole)], found);
        Assert.Equal(1, found.Sum(index => index.Value), tolerance: 0.02);
    }

    // The tails of a normal are wide bins, so that a little of what it explains counts to the others: 0.4 % of it at 100 bins.
    [Fact]
    public void Input_that_explains_everything_has_nearly_all_of_it()
    {
        var normal = Distribution.Normal(0, 1);

        var found = Indices(6, 2, u => normal.At(u[0]));

        Assert.InRange(found[0].Value, 0.99, 1);
        Assert.Equal(0, found[1].Value, tolerance: 0.01);
    }

    // A model of products alone has nothing of first order.
    [Fact]
    public void Inputs_that_matter_only_together_have_no_index_of_their_own()
    {
        var found = Indices(7, 2, u => (u[0] - 0.5) * (u[1] - 0.5));

        AssertWithin([0, 0], found);
    }

    [Fact]
    public void Standard_error_covers_the_error_of_nearly_all_seeds()
    {
        double[] slopes = [2, 1];

        var misses = Enumerable.Range(100, 40).Count(seed =>
        {
            var found = Indices((ulong)seed, 2, u => slopes[0] * u[0] + slopes[1] * u[1], samples: 1_000);
            return Math.Abs(found[0].Value - 0.8) > 2 * found[0].StandardError + Discretisation(1_000);
        });

        // Two standard errors miss one time in twenty: of 40, six or more have a chance below 2 %.
        Assert.InRange(misses, 0, 5);
    }

    [Fact]
    public void Figure_that_does_not_move_has_no_index()
    {
        Assert.All(Indices(8, 2, _ => 0.1 + 0.2), index => Assert.True(double.IsNaN(index.Value)));
        Assert.All(Indices(8, 2, _ => double.NaN), index => Assert.True(double.IsNaN(index.Value)));
    }

    [Fact]
    public void Samples_without_a_figure_count_for_nothing()
    {
        var found = Indices(9, 2, u => u[1] > 0.5 ? double.PositiveInfinity : u[0]);

        Assert.InRange(found[0].Value, 0.99, 1);
    }

    static FirstOrderIndex[] Indices(ulong seed, int inputs, Func<double[], double> model, int samples = Samples)
    {
        var hypercube = new LatinHypercube(samples, inputs, seed);
        var bins = FirstOrderIndex.Bins(samples);
        var figure = new double[samples];
        for (var i = 0; i < samples; i++) figure[i] = model([.. Enumerable.Range(0, inputs).Select(input => hypercube.At(i, input))]);
        return [.. Enumerable.Range(0, inputs).Select(input =>
            FirstOrderIndex.Of([.. Enumerable.Range(0, samples).Select(i => (int)((long)hypercube.Stratum(i, input) * bins / samples))], bins, figure))];
    }

    // Four standard errors, and what bins of this width hide at most of a smooth function.
    static void AssertWithin(double[] exact, FirstOrderIndex[] found)
    {
        for (var input = 0; input < exact.Length; input++)
            Assert.Equal(exact[input], found[input].Value, tolerance: 4 * found[input].StandardError + Discretisation(Samples));
    }

    static double Discretisation(int samples) => 4.0 / (FirstOrderIndex.Bins(samples) * FirstOrderIndex.Bins(samples));
}
