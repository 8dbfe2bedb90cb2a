using FlowCalc.Agents;

namespace FlowCalc.Tests.Agents;

/// <summary>The table of a gas against the equation that it is made from, and what it gives back.</summary>
public class RealGasTests
{
    public static TheoryData<string> Gases => ["nitrogen", "argon"];

    static RealGas Of(string id) => id == "nitrogen" ? RealGas.Nitrogen : RealGas.Argon;

    [Theory]
    [MemberData(nameof(Gases))]
    public void The_table_is_the_equation_within_what_it_states(string id)
    {
        var (gas, equation) = (Of(id), HelmholtzEquation.Of(id));
        double pressure = 0, perKelvin = 0, heat = 0;
        for (var temperature = 180.0; temperature < 640; temperature += 3.7)
            for (var density = 0.5; density < gas.HighestDensity; density *= 1.07)
            {
                var (table, exact) = (gas.At(temperature, density), equation.At(temperature, density));
                pressure = Math.Max(pressure, Math.Abs(table.Pressure / exact.Pressure - 1));
                perKelvin = Math.Max(perKelvin, Math.Abs(table.PressurePerKelvin / exact.PressurePerKelvin - 1));
                heat = Math.Max(heat, Math.Abs(table.HeatCapacity / exact.IsochoricHeatCapacity - 1));
            }

        Assert.True(pressure < 1e-5 && perKelvin < 1e-4 && heat < 1e-3, $"{pressure:E1} {perKelvin:E1} {heat:E1}");
    }

    // A cushion that has cooled is thin: the cold corner that counts.
    [Theory]
    [MemberData(nameof(Gases))]
    public void Cold_and_thin_the_table_is_nearly_as_good(string id)
    {
        var (gas, equation) = (Of(id), HelmholtzEquation.Of(id));
        double worst = 0;
        for (var temperature = 90.0; temperature < 180; temperature += 1.3)
            for (var density = 0.1; density < 0.15 * gas.HighestDensity / 2.3; density *= 1.2)
                worst = Math.Max(worst, Math.Abs(gas.At(temperature, density).Pressure / equation.At(temperature, density).Pressure - 1));

        Assert.True(worst < 1e-4, $"{worst:E1}");
    }

    [Theory]
    [InlineData(260, 5e6)]
    [InlineData(293.15, 1.5e6)]
    [InlineData(333.15, 3e7)]
    [InlineData(293.15, 1e8)]
    public void A_density_gives_back_its_pressure(double temperature, double pressure)
    {
        foreach (var gas in (IGas[])[RealGas.Nitrogen, RealGas.Argon, RealGas.Air, new IdealGas(296.8, 1.4)])
            Assert.Equal(pressure, gas.At(temperature, GasDensity.Of(gas, temperature, pressure)).Pressure, tolerance: 1e-9 * pressure);
    }

    [Fact]
    public void Thin_gas_is_ideal()
    {
        foreach (var gas in (RealGas[])[RealGas.Nitrogen, RealGas.Argon, RealGas.Air])
        {
            var point = gas.At(300, 1e-4);
            Assert.Equal(1, point.Pressure / (1e-4 * gas.GasConstant * 300), tolerance: 1e-6);
            Assert.Equal(gas.GasConstant * 1e-4, point.PressurePerKelvin, tolerance: 1e-6 * gas.GasConstant * 1e-4);
        }
        Assert.Equal(1.4, RealGas.Nitrogen.IdealHeatCapacityRatio(300), tolerance: 1e-3);
        Assert.Equal(5.0 / 3, RealGas.Argon.IdealHeatCapacityRatio(300), tolerance: 1e-9);
    }

    // Compressibility of air at 300 K as tabulated in Perry's Chemical Engineers' Handbook, from memory.
    [Theory]
    [InlineData(1e7, 0.9930, 0.02)]
    [InlineData(2e7, 1.0326, 0.03)]
    [InlineData(3e7, 1.1089, 0.05)]
    public void Air_as_nitrogen_of_its_molar_mass_is_as_near_as_it_states(double pressure, double compressibility, double within)
    {
        var density = pressure / (compressibility * RealGas.Air.GasConstant * 300);

        Assert.Equal(1, RealGas.Air.At(300, density).Pressure / pressure, tolerance: within);
    }

    [Theory]
    [InlineData(84, 1)]
    [InlineData(651, 1)]
    [InlineData(300, -1)]
    [InlineData(300, 1e4)]
    [InlineData(double.NaN, 1)]
    public void Outside_its_range_there_is_no_state(double temperature, double density) =>
        Assert.True(double.IsNaN(RealGas.Nitrogen.At(temperature, density).Pressure));
}
