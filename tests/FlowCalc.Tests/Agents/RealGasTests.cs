using FlowCalc.Agents;

namespace FlowCalc.Tests.Agents;

/// <summary>The surface of a gas against the equation that it is made from, and what it gives back.</summary>
public class RealGasTests
{
    static readonly RealGas[] All = [RealGas.Nitrogen, RealGas.Argon, RealGas.Air];

    static RealGas Of(string id) => id == "nitrogen" ? RealGas.Nitrogen : RealGas.Argon;

    /// <summary>Gas, temperatures K, highest density over the critical, then the errors that the doc of the gas states: pressure, its slope, heat capacity.</summary>
    public static TheoryData<string, double, double, double, double[]> Regions
    {
        get
        {
            var regions = new TheoryData<string, double, double, double, double[]>();
            foreach (var gas in (string[])["nitrogen", "argon"])
            {
                regions.Add(gas, 200, 650, 2.3, [2e-9, 2e-8, 1e-5]);
                regions.Add(gas, 150, 200, 2.3, [5e-6, 1e-4, 2e-3]);
                regions.Add(gas, 120, 150, 0.3, [1e-5, 1e-4, 1e-3]);
                regions.Add(gas, 85, 120, 0.05, [1e-5, 1e-4, 1e-3]);
            }
            return regions;
        }
    }

    [Theory]
    [MemberData(nameof(Regions))]
    public void The_surface_is_the_equation_within_what_it_states(string id, double coldest, double hottest, double densest, double[] within)
    {
        var (gas, equation) = (Of(id), HelmholtzEquation.Of(id));
        double pressure = 0, perKelvin = 0, heat = 0;
        for (var i = 0; i <= 150; i++)
            for (var j = 1; j <= 150; j++)
            {
                // Even steps, so that the scan falls on corners, sides and insides of pieces alike.
                var (temperature, density) = (coldest + i * (hottest - coldest) / 150, j * densest * equation.ReducingDensity / 150.0001);
                var (near, exact) = (gas.At(temperature, density), equation.At(temperature, density));
                pressure = Math.Max(pressure, Math.Abs(near.Pressure / exact.Pressure - 1));
                perKelvin = Math.Max(perKelvin, Math.Abs(near.PressurePerKelvin / exact.PressurePerKelvin - 1));
                heat = Math.Max(heat, Math.Abs(near.HeatCapacity / exact.IsochoricHeatCapacity - 1));
            }

        Assert.True(pressure < within[0] && perKelvin < within[1] && heat < within[2], $"{pressure:E1} {perKelvin:E1} {heat:E1}");
    }

    [Theory]
    [InlineData(260, 5e6)]
    [InlineData(293.15, 1.5e6)]
    [InlineData(333.15, 3e7)]
    [InlineData(253.15, 3.5e7)]
    [InlineData(293.15, 1e8)]
    [InlineData(293.15, 1)]
    public void A_density_gives_back_its_pressure(double temperature, double pressure)
    {
        foreach (var gas in (IGas[])[.. All, new IdealGas(296.8, 1.4)])
            Assert.Equal(pressure, gas.At(temperature, GasDensity.Of(gas, temperature, pressure)).Pressure, tolerance: 1e-9 * pressure);
    }

    [Fact]
    public void A_pressure_beyond_the_data_has_no_density()
    {
        Assert.Equal(double.NaN, GasDensity.Of(RealGas.Nitrogen, 293.15, 4e8));
        Assert.Equal(double.NaN, GasDensity.Of(RealGas.Nitrogen, 700, 1e6));
        Assert.Throws<ArgumentOutOfRangeException>(() => GasDensity.Of(RealGas.Nitrogen, 293.15, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => GasDensity.Of(RealGas.Nitrogen, -1, 1e5));
    }

    [Fact]
    public void Thin_gas_is_ideal()
    {
        foreach (var gas in All)
        {
            var point = gas.At(300, 1e-4);
            Assert.Equal(1, point.Pressure / (1e-4 * gas.GasConstant * 300), tolerance: 1e-6);
            Assert.Equal(gas.GasConstant * 1e-4, point.PressurePerKelvin, tolerance: 1e-6 * gas.GasConstant * 1e-4);
            Assert.Equal(0, gas.At(300, 0).Pressure, tolerance: 0);
        }
        Assert.Equal(1.4, RealGas.Nitrogen.IdealHeatCapacityRatio(300), tolerance: 1e-3);
        Assert.Equal(5.0 / 3, RealGas.Argon.IdealHeatCapacityRatio(300), tolerance: 1e-5);
    }

    [Fact]
    public void Air_is_nitrogen_by_the_mole()
    {
        var (nitrogen, air) = (RealGas.Nitrogen, RealGas.Air);
        var scale = nitrogen.GasConstant / air.GasConstant;

        var (light, heavy) = (nitrogen.At(280, 60), air.At(280, 60 * scale));

        Assert.Equal(0.0289645 / 0.02801348, scale, tolerance: 1e-12);
        Assert.Equal(light.Pressure, heavy.Pressure, tolerance: 1e-12 * light.Pressure);
        Assert.Equal(light.HeatCapacity, heavy.HeatCapacity * scale, tolerance: 1e-12 * light.HeatCapacity);
        Assert.Equal(("air", "Air", "nitrogen"), (air.Id, air.Title, nitrogen.Id));
        Assert.Equal(["span-nitrogen-2000", "coolprop"], air.Sources);
    }

    [Theory]
    [InlineData(84.9, 1)]
    [InlineData(650.1, 1)]
    [InlineData(300, -1e-9)]
    [InlineData(300, 1e4)]
    [InlineData(300, double.NaN)]
    [InlineData(double.NaN, 1)]
    public void Outside_its_range_there_is_no_state(double temperature, double density)
    {
        var point = RealGas.Nitrogen.At(temperature, density);

        Assert.True(double.IsNaN(point.Pressure) && double.IsNaN(point.PressurePerKelvin) && double.IsNaN(point.HeatCapacity));
    }

    [Fact]
    public void The_ends_of_the_range_belong_to_it()
    {
        foreach (var gas in All)
            foreach (var (temperature, density) in ((double, double)[])[(RealGas.LowestTemperature, 0), (RealGas.HighestTemperature, gas.HighestDensity)])
                Assert.True(gas.At(temperature, density) is { HeatCapacity: > 0, Pressure: >= 0 });
    }
}
