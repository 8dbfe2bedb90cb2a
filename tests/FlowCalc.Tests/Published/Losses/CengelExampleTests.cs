namespace FlowCalc.Tests.Published.Losses;

/// <summary>Y. A. Çengel and J. M. Cimbala, Fluid Mechanics, ch. 8, worked examples. From memory; 3-figure answers.</summary>
public class CengelExampleTests
{
    private const double Bore = 0.003048, Length = 9.144, Velocity = 0.9144, Density = 999.87246046, Viscosity = 0.00154471416972;

    [Fact]
    public void Laminar_water_in_a_3_mm_pipe_loses_929_pounds_a_square_foot() =>
        Assert.Equal(44_480.8, LaminarDrop(), tolerance: 0.005 * 44_480.8);

    [Fact]
    public void Laminar_water_in_a_3_mm_pipe_loses_14_point_9_feet_of_head() =>
        Assert.Equal(4.54152, LaminarDrop() / (Density * StraightTube.Gravity), tolerance: 0.005 * 4.54152);

    [Fact]
    public void Turbulent_water_in_a_2_inch_stainless_pipe_loses_1700_pounds_a_square_foot()
    {
        const double bore = 0.0508;

        var drop = StraightTube.PressureDrop(0.0056633693184, bore, 60.96, 2.1336e-6 / bore, 998.91135268, 0.0011214803451839999);

        Assert.Equal(81_396.4, drop, tolerance: 0.01 * 81_396.4);
    }

    private static double LaminarDrop() => StraightTube.PressureDrop(Velocity * Math.PI / 4 * Bore * Bore, Bore, Length, 0, Density, Viscosity);
}
