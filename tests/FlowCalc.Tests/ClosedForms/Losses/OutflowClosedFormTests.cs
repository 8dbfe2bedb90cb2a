using FlowCalc.Losses;

namespace FlowCalc.Tests.ClosedForms.Losses;

public class OutflowClosedFormTests
{
    [Fact]
    public void Lossless_orifice_under_a_column_flows_out_at_the_speed_of_fall()
    {
        const double density = 998, height = 2.5, area = 1e-5;

        var flow = Orifice.VolumeFlow(HydrostaticRise.PressureDrop(density, height), density, area).VolumeFlow;

        Assert.Equal(area * Math.Sqrt(2 * 9.80665 * height), flow, tolerance: 1e-12 * flow); // Torricelli
    }

    [Fact]
    public void Metre_of_water_weighs_9806_point_65_pascals()
    {
        Assert.Equal(9806.65, HydrostaticRise.PressureDrop(1000, 1), tolerance: 1e-9);
        Assert.Equal(-9806.65, HydrostaticRise.PressureDrop(1000, -1), tolerance: 1e-9);
    }

    [Fact]
    public void Orifice_at_rest_has_no_pressure_and_an_infinite_slope_of_flow()
    {
        Assert.Equal((0, 0), Orifice.PressureDrop(0, 998, 1e-6));
        Assert.Equal((0, double.PositiveInfinity), Orifice.VolumeFlow(0, 998, 1e-6));
    }

    [Fact]
    public void Effective_area_is_that_of_all_holes_times_the_discharge_coefficient() =>
        Assert.Equal(3 * 0.8 * Math.PI * 1e-6, Orifice.EffectiveArea(0.002, 0.8, 3), tolerance: 1e-18);

    [Fact]
    public void K_factor_of_a_round_hole_is_0_point_66643_times_Cd_and_the_square_of_its_millimetres()
    {
        var k = KFactor.ToLitresPerMinute(KFactor.FromEffectiveArea(Orifice.EffectiveArea(0.001, 1)));

        Assert.Equal(Math.PI / 4 * 1e-6 * Math.Sqrt(2e5 / 1000) * 60_000, k, tolerance: 1e-12);
        Assert.Equal(0.66643, k, tolerance: 5e-6);
    }

    [Fact]
    public void K_factor_and_orifice_pass_the_same_flow()
    {
        var area = Orifice.EffectiveArea(0.002, 0.8);
        var byOrifice = Orifice.VolumeFlow(5e5, 1000, area).VolumeFlow;

        var litresPerMinute = 0.66643 * 0.8 * 4 * Math.Sqrt(5);

        Assert.Equal(litresPerMinute / 60_000, byOrifice, tolerance: 1e-5 * byOrifice);
        Assert.Equal(KFactor.FromEffectiveArea(area) * Math.Sqrt(5e5), byOrifice, tolerance: 1e-12 * byOrifice);
    }

    [Fact]
    public void K_factor_of_1_litre_a_minute_passes_a_litre_a_minute_at_1_bar() =>
        Assert.Equal(1e-3 / 60, KFactor.FromLitresPerMinute(1) * Math.Sqrt(1e5), tolerance: 1e-18);

    [Fact]
    public void Lighter_liquid_flows_faster_by_the_root_of_the_ratio_of_densities()
    {
        var area = KFactor.ToEffectiveArea(KFactor.FromLitresPerMinute(2));

        Assert.Equal(Math.Sqrt(1000 / 800.0) * 2e-3 / 60, Orifice.VolumeFlow(1e5, 800, area).VolumeFlow, tolerance: 1e-16);
    }

    [Fact]
    public void Orifice_read_at_a_wall_tapping_shows_a_larger_coefficient()
    {
        // Total pressure is the tapping's pressure and the velocity head in the feed tube.
        const double density = 1000, bore = 0.004, tapping = 3e5;
        var area = Orifice.EffectiveArea(0.0028, 0.8);
        var areaRatio = area / (Math.PI / 4 * bore * bore);
        var flow = area / Math.Sqrt(1 - areaRatio * areaRatio) * Math.Sqrt(2 * tapping / density);

        var total = tapping + LossCoefficient.PressureDrop(1, density, flow / (Math.PI / 4 * bore * bore));

        Assert.Equal(flow, Orifice.VolumeFlow(total, density, area).VolumeFlow, tolerance: 1e-12 * flow);
    }

    [Fact]
    public void Valve_loses_in_proportion_to_density_and_the_square_of_the_flow()
    {
        var kv = FlowCoefficientLoss.FromCubicMetresPerHour(1.2);

        var (drop, slope) = FlowCoefficientLoss.PressureDrop(0.6 / 3600, 800, kv);

        Assert.Equal(1e5 * 0.8 / 4, drop, tolerance: 1e-9);
        Assert.Equal(2 * drop * 6000, slope, tolerance: 1e-9 * slope);
        Assert.Equal((0, 0), FlowCoefficientLoss.PressureDrop(0, 800, kv));
    }

    // The equation evaluated apart from this code.
    [Theory]
    [InlineData(10, 2, 0.08173671924852832)]
    [InlineData(1e3, 4, 0.6859883901837387)]
    [InlineData(3e3, 4, 0.7591946505854659)]
    [InlineData(2e4, 10, 0.7392400560577238)]
    public void Short_tube_follows_its_equation(double reynolds, double lengthOverDiameter, double expected) =>
        Assert.Equal(expected, Lichtarowicz.DischargeCoefficient(reynolds, lengthOverDiameter), tolerance: 1e-13);

    [Fact]
    public void Short_tube_tends_to_its_ultimate_discharge_coefficient() =>
        Assert.Equal(Lichtarowicz.UltimateDischargeCoefficient(4), Lichtarowicz.DischargeCoefficient(1e30, 4), tolerance: 5e-6);

    [Theory]
    [InlineData(0.049, 0.573)]
    [InlineData(0.05, 0.57)]
    [InlineData(0.25, 0.57)]
    public void Thick_wall_makes_a_projecting_inlet_a_flush_one(double wallOverBore, double expected) =>
        Assert.Equal(expected, TubeInlet.Projecting(wallOverBore), tolerance: 0.003);

    [Theory]
    [InlineData(90, 0.57)]
    [InlineData(45, 0.88)]
    public void Slanted_inlet_runs_from_the_square_cut_to_the_usual_estimate(double degrees, double expected) =>
        Assert.Equal(expected, TubeInlet.Slanted(degrees * Math.PI / 180), tolerance: 0.005);
}
