using FlowCalc.Calibration;
using FlowCalc.Layouts;
using FlowCalc.Tests.Calibration;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Optimization;

namespace FlowCalc.Tests.Peers.Calibration;

/// <summary>Fits against another minimiser of Math.NET Numerics, which takes no derivatives, against a grid, and tails against its distributions.</summary>
public class MinimiserTests
{
    [Theory]
    [InlineData("R8", 7)]
    [InlineData("R6", 8)]
    [InlineData("R9", 9)]
    public void A_run_is_where_golden_sections_find_the_least(string run, ulong seed)
    {
        var layout = Planted.Tested(Planted.Demo, Planted.Kink(run, 20), seed);
        var measured = layout.Measured!;
        var trial = TrialList.Of(measured, new HeldRig(layout, measured, TestContext.Current.CancellationToken), []).Single(one => one.Run == Planted.RunOf(layout, run));
        var fit = new BoundedFit(trial, measured);
        double Chi(double at) => fit.Residuals([at]).Sum(residual => residual * residual);

        var least = GoldenSectionMinimizer.Minimum(ObjectiveFunction.ScalarValue(Chi), Unknown.LeastOpen, 1, 1e-9, 1000);

        Assert.Equal(least.MinimizingPoint, fit.Find()[0], tolerance: 1e-6);
        Assert.All(Enumerable.Range(0, 200), step => Assert.True(Chi(Unknown.LeastOpen + (1 - Unknown.LeastOpen) * step / 200) >= Chi(least.MinimizingPoint) - 1e-9));
    }

    [Fact]
    public void Two_makes_of_nozzle_are_where_the_simplex_finds_the_least()
    {
        var layout = Planted.Tested(Planted.Demo, drawn => BuiltLayout.WithNozzles(drawn, NozzleGroup.Of(drawn.Points), [0.92, 1.05]), seed: 21);
        var measured = layout.Measured!;
        var trial = TrialList.Of(measured, new HeldRig(layout, measured, TestContext.Current.CancellationToken), []).Single(one => one.Kind == CauseKind.Nozzles);
        var fit = new BoundedFit(trial, measured);

        var least = NelderMeadSimplex.Minimum(ObjectiveFunction.Value(at => fit.Residuals(at.ToArray()).Sum(residual => residual * residual)), MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(2, 0.01), 1e-12, 5000);

        var found = fit.Find();
        Assert.Equal(least.MinimizingPoint[0], found[0], tolerance: 1e-5);
        Assert.Equal(least.MinimizingPoint[1], found[1], tolerance: 1e-5);
    }

    [Fact]
    public void A_run_in_which_less_loss_would_be_better_stays_as_drawn()
    {
        var layout = Planted.Tested(Planted.Demo, drawn => drawn);
        var readings = layout.Measured!.Readings;
        var point = layout.Points.IndexOf(layout.Points.Single(one => one.Id == "driver"));
        var index = readings.IndexOf(readings.Single(reading => reading.Point == point));
        layout = layout with { Measured = layout.Measured with { Readings = readings.SetItem(index, readings[index] with { Value = 1.05 * readings[index].Value }) } };

        var found = Planted.Of(Planted.Solve(layout), CauseKind.Run, Planted.RunOf(layout, "R7"));

        Assert.Equal(0, found.Unknowns[0].Value, tolerance: 0);
        Assert.True(found.Unknowns[0].IsAtBound);
        Assert.Equal(0, found.FlowLost!.Value, tolerance: 0);
    }

    [Fact]
    public void A_fit_has_the_chance_of_the_chi_square_that_is_left()
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, Planted.Kink("R8", 20), seed: 5));

        Assert.All(result.Causes.Where(cause => cause.DegreesOfFreedom > 0), cause => Assert.Equal(1 - ChiSquared.CDF(cause.DegreesOfFreedom, cause.ChiSquare), cause.Chance!.Value, tolerance: 1e-9));
        Assert.InRange(result.Best!.Chance!.Value, 1e-3, 1);
    }

    // Percentage points of chi-square, 5 %: 3.841, 11.070 and 18.307 for 1, 5 and 10 degrees of freedom, as every table of statistics has them (from memory).
    [Theory]
    [InlineData(1, 3.841)]
    [InlineData(5, 11.070)]
    [InlineData(10, 18.307)]
    public void Chance_is_the_tail_of_chi_square(int degrees, double chi)
    {
        Assert.Equal(0.05, 1 - ChiSquared.CDF(degrees, chi), tolerance: 2e-5);
        Assert.Equal(0.05, MathNet.Numerics.SpecialFunctions.GammaUpperRegularized(degrees / 2.0, chi / 2), tolerance: 2e-5);
    }
}
