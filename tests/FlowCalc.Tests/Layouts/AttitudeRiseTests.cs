using FlowCalc.Layouts;
using FlowCalc.Tests.Findings;
using UnitsNet;

namespace FlowCalc.Tests.Layouts;

/// <summary>Rises of runs in attitudes.</summary>
public class AttitudeRiseTests
{
    // The trunk goes 1 m forward and 0.2 m up, the left run 0.3 m to the left; the rest has no places.
    static readonly Layout Layout = Placed();

    [Theory]
    [InlineData(0, 0, -1, 0.2, 0, 0.4)] // standing
    [InlineData(0, 0, 1, -0.2, 0, -0.4)] // on the roof
    [InlineData(1, 0, -1, -0.8, 0, 0.4)] // braking at 1 g: what flows forward falls
    [InlineData(0, -1, 0, 0, 0.3, 0)] // on the right side
    [InlineData(0, 0, -2, 0.4, 0, 0.8)]
    [InlineData(0, 0, 0, 0, 0, 0)] // falling freely
    public void A_run_climbs_against_gravity(double x, double y, double z, double trunk, double left, double unplaced)
    {
        var rises = Layout.Runs.Select(run => AttitudeRise.Of(Layout, run, new(x, y, z))).ToArray();

        Assert.Equal(trunk, rises[0], tolerance: 1e-15);
        Assert.Equal(left, rises[1], tolerance: 1e-15);
        Assert.Equal(unplaced, rises[2], tolerance: 1e-15);
    }

    [Fact]
    public void Standing_it_is_the_rise_of_the_run() =>
        Assert.All(Layout.Runs, run => Assert.Equal(run.Rise.Meters, AttitudeRise.Of(Layout, run, new(0, 0, -1)), tolerance: 1e-15));

    [Fact]
    public void Runs_without_places_are_named_where_gravity_has_a_sideways_part()
    {
        Assert.Empty(AttitudeRise.WithoutSideways(Layout, new(0, 0, -3)));
        Assert.Equal([2], AttitudeRise.WithoutSideways(Layout, new(0, 1e-3, -1)));
        Assert.Equal([2], AttitudeRise.WithoutSideways(Layout, new(1, 0, 0)));
    }

    static Layout Placed()
    {
        var layout = Specimen.Read(Pair.Json).Layout!;
        LayoutPoint[] points = [.. layout.Points];
        points[0] = points[0] with { At = new(Length.Zero, Length.Zero, Length.Zero) };
        points[1] = points[1] with { At = new(Length.FromMeters(1), Length.Zero, Length.FromMeters(0.2)) };
        points[2] = points[2] with { At = new(Length.FromMeters(1), Length.FromMeters(0.3), Length.FromMeters(0.2)) };
        Run[] runs = [.. layout.Runs];
        runs[0] = runs[0] with { Rise = Length.FromMeters(0.2) };
        runs[2] = runs[2] with { Rise = Length.FromMeters(0.4) };
        return layout with { Points = [.. points], Runs = [.. runs] };
    }
}
