using FlowCalc.Calibration;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Calibration;

/// <summary>What was planted is found: to the last digits without errors, within the stated intervals with them.</summary>
public class RecoveryTests
{
    const double MillionthOfIt = 1e-6;

    [Theory]
    [InlineData("R8", 30)]
    [InlineData("R11", 4)]
    [InlineData("R5", 12)]
    [InlineData("R3", 400)]
    public void A_kink_without_errors_is_found_to_a_millionth(string run, double coefficient)
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, Planted.Kink(run, coefficient), points: ["T-cab", "T-front"]));

        var found = Planted.Of(result, CauseKind.Run, Planted.RunOf(Planted.Demo, run));
        Assert.Equal(1, Assert.Single(found.Unknowns).Value / coefficient, tolerance: MillionthOfIt);
        Assert.Equal(0, found.ChiSquare, tolerance: 1e-6);
        Assert.Equal(found, result.Best);
    }

    [Fact]
    public void A_kink_before_all_nozzles_is_not_told_from_a_lower_pressure_of_the_supply()
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, Planted.Kink("R1", 30), points: ["T-cab", "T-front"]));

        var (kink, pressure) = (Planted.Of(result, CauseKind.Run, Planted.RunOf(Planted.Demo, "R1")), Planted.Of(result, CauseKind.SupplyPressure));
        Assert.Equal(30, kink.Unknowns[0].Value, tolerance: 1e-4);
        Assert.Equal(kink.ChiSquare, pressure.ChiSquare, tolerance: 1e-6);
    }

    [Theory]
    [InlineData(40e-6)]
    [InlineData(5e-6)]
    public void A_roughness_without_errors_is_found_to_a_millionth(double roughness)
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, layout => BuiltLayout.WithRoughness(layout, roughness)));

        Assert.Equal(1, Planted.Of(result, CauseKind.Roughness).Unknowns[0].Value / roughness, tolerance: MillionthOfIt);
    }

    [Theory]
    [InlineData(0.93)]
    [InlineData(1.06)]
    public void A_bore_without_errors_is_found_to_a_millionth(double factor)
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, layout => BuiltLayout.WithBores(layout, factor)));

        Assert.Equal(factor, Planted.Of(result, CauseKind.Bore).Unknowns[0].Value, tolerance: MillionthOfIt);
    }

    [Fact]
    public void K_factors_by_type_without_errors_are_found_to_a_millionth()
    {
        var groups = NozzleGroup.Of(Planted.Demo.Points);
        var result = Planted.Solve(Planted.Tested(Planted.Demo, layout => BuiltLayout.WithNozzles(layout, groups, [0.85, 1.1])));

        var found = Planted.Of(result, CauseKind.Nozzles);
        Assert.Equal(["cone-1.2", "cone-1.5"], found.Unknowns.Select(unknown => unknown.Nozzles!.Type));
        Assert.Equal(0.85, found.Unknowns[0].Value, tolerance: MillionthOfIt);
        Assert.Equal(1.1, found.Unknowns[1].Value, tolerance: MillionthOfIt);
        Assert.Equal(CauseKind.Nozzles, result.Best!.Kind);
    }

    [Theory]
    [InlineData(0.8)]
    [InlineData(1.3)]
    public void A_pressure_of_the_supply_without_errors_is_found_to_a_millionth(double factor)
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, layout => layout, pressureFactor: factor));

        Assert.Equal(factor, Planted.Of(result, CauseKind.SupplyPressure).Unknowns[0].Value, tolerance: MillionthOfIt);
        Assert.NotEqual(CauseKind.AsDrawn, result.Best!.Kind);
    }

    [Theory]
    [InlineData("R8", 30)]
    [InlineData("R6", 90)]
    [InlineData("R11", 8)]
    public void A_kink_is_named_and_its_interval_holds_it_in_95_of_100_tests(string run, double coefficient)
    {
        const ulong tests = 200;
        var (named, held, of) = (0, 0, Planted.RunOf(Planted.Demo, run));
        var (sizes, errors) = (new List<double>(), new List<double>());
        for (ulong seed = 1; seed <= tests; seed++)
        {
            var result = Planted.Solve(Planted.Tested(Planted.Demo, Planted.Kink(run, coefficient), seed));
            if (result.Best!.Run == of) named++;
            var found = Planted.Of(result, CauseKind.Run, of).Unknowns[0];
            if (found.Low <= coefficient && coefficient <= found.High) held++;
            sizes.Add(found.Value);
            errors.Add(found.StandardError ?? 0);
        }

        // Of 200 tests 190 are held on average, 3.1 either way; an interval widened by scatter holds some more.
        Assert.InRange(held, 180, 199);
        Assert.True(named >= 190, $"{named} of {tests}");
        Assert.InRange(MathNet.Numerics.Statistics.Statistics.StandardDeviation(sizes) / errors.Average(), 0.7, 1.3);
    }

    [Fact]
    public void Roughness_and_bore_are_within_their_intervals_in_95_of_100_tests()
    {
        const ulong tests = 150;
        const double roughness = 60e-6, factor = 0.95;
        var (rough, narrow) = (0, 0);
        for (ulong seed = 1; seed <= tests; seed++)
        {
            var found = Planted.Of(Planted.Solve(Planted.Tested(Planted.Demo, layout => BuiltLayout.WithRoughness(layout, roughness), seed)), CauseKind.Roughness).Unknowns[0];
            if (found.Low <= roughness && roughness <= found.High) rough++;
            found = Planted.Of(Planted.Solve(Planted.Tested(Planted.Demo, layout => BuiltLayout.WithBores(layout, factor), seed)), CauseKind.Bore).Unknowns[0];
            if (found.Low <= factor && factor <= found.High) narrow++;
        }

        Assert.InRange(rough, 134, 149);
        Assert.InRange(narrow, 134, 149);
    }

    [Fact]
    public void A_system_built_as_drawn_is_called_so_in_95_of_100_tests()
    {
        const ulong tests = 300;
        var alarms = 0;
        for (ulong seed = 1; seed <= tests; seed++)
            if (Planted.Solve(Planted.Tested(Planted.Demo, layout => layout, seed)).Best!.Kind != CauseKind.AsDrawn) alarms++;

        Assert.True(alarms <= 15, $"{alarms} of {tests}");
    }

    [Theory]
    [InlineData("R8")]
    [InlineData("R2")]
    [InlineData("R11")]
    public void A_blocked_run_is_named(string run)
    {
        var result = Planted.Solve(Planted.Tested(Planted.Demo, Planted.Kink(run, 1e8), seed: 3));

        Assert.Equal(Planted.RunOf(Planted.Demo, run), result.Best!.Run);
        Assert.True(result.Best.FlowLost > 0.95, $"{result.Best.FlowLost}");
    }

    [Fact]
    public void The_largest_flow_that_is_lost_grows_with_the_loss()
    {
        double Lost(double coefficient) => Planted.Solve(Planted.Tested(Planted.Demo, Planted.Kink("R8", coefficient))).Best!.FlowLost ?? 0;

        Assert.True(Lost(20) < Lost(40) && Lost(40) < Lost(80));
    }
}
