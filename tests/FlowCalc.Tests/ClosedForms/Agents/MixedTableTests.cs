using FlowCalc.Agents;

namespace FlowCalc.Tests.ClosedForms.Agents;

/// <summary>Tables between tables: against ideal gases, where what lies between is known, and against the table of the very state where it is a real one's.</summary>
public class MixedTableTests
{
    const double Ambient = 101_325, Top = 6e6;

    static ExpansionTable Ideal(double rt, double viscosity) => ExpansionTable.TryBuild(new IdealGasStream(296.8, 1.4, rt / 296.8, viscosity), Top, Ambient, NozzleModel.Delayed)!;

    static ExpansionTable Nitrogen(double kelvin)
    {
        var fluid = Fluid.Of("nitrogen");
        var state = fluid.At(kelvin, 180);
        return ExpansionTable.TryBuild(new PureStream(fluid, state.Pressure, state.Enthalpy, kelvin, 180, Ambient / 2), 1.04 * 150e5, Ambient, NozzleModel.Delayed)!;
    }

    // p/ρ = RT goes into the mixture in proportion, so that density and work are those of the gas between; viscosity by its logarithm.
    [Theory]
    [InlineData(0.25)]
    [InlineData(0.6)]
    [InlineData(1.2)]
    public void Between_two_ideal_gases_lies_the_one_of_the_temperature_between(double weight)
    {
        var (cold, warm) = (Ideal(70_000, 15e-6), Ideal(90_000, 20e-6));
        var mixed = ExpansionTable.Mixed([cold, warm], [1 - weight, weight]);
        var rt = 70_000 + weight * 20_000;

        foreach (var pressure in (double[])[1.2e5, 7e5, 3e6, 5.9e6])
        {
            var at = mixed.At(Math.Log(pressure));
            Assert.Equal(pressure / rt, at.Density, tolerance: 1e-9 * pressure / rt);
            Assert.Equal(rt, at.Quotient, tolerance: 1e-9 * rt);
            Assert.Equal(1, at.DensitySlope, tolerance: 1e-9);
            Assert.Equal(rt * Math.Log(pressure / Ambient), at.Work, tolerance: 1e-4 * rt);
            Assert.Equal(Math.Log(15e-6) + weight * Math.Log(20.0 / 15), Math.Log(mixed.Viscosity(Math.Log(pressure))), tolerance: 1e-9);
        }
        Assert.Equal(Math.Log(Top), mixed.LogTop, tolerance: 1e-12);
    }

    [Fact]
    public void A_table_of_one_with_all_the_weight_is_that_one()
    {
        var (cold, warm) = (Ideal(70_000, 15e-6), Ideal(90_000, 20e-6));
        var mixed = ExpansionTable.Mixed([cold, warm], [0, 1]);

        foreach (var log in (double[])[11.7, 13, 15.2])
        {
            Assert.Equal(warm.At(log), mixed.At(log));
            Assert.Equal(warm.Nozzle(log), mixed.Nozzle(log));
        }
    }

    // Three points of Lagrange, 6 K apart, as a discharge has them.
    [Fact]
    public void Between_three_states_of_a_real_gas_lies_the_table_of_the_state_between()
    {
        var mixed = ExpansionTable.Mixed([Nitrogen(278), Nitrogen(284), Nitrogen(290)], [0.375, 0.75, -0.125]);
        var own = Nitrogen(281);

        foreach (var bar in (double[])[2, 15, 60, 149])
        {
            var log = Math.Log(bar * 1e5);
            var (a, b) = (mixed.At(log), own.At(log));
            Assert.Equal(b.Density, a.Density, tolerance: 2e-5 * b.Density);
            Assert.Equal(b.Potential, a.Potential, tolerance: 1e-4 * Math.Abs(b.Potential));
            Assert.Equal(b.Work, a.Work, tolerance: 1e-4 * Math.Abs(b.Work));
            Assert.Equal(own.Nozzle(log).Flux, mixed.Nozzle(log).Flux, tolerance: 1e-4 * own.Nozzle(log).Flux);
        }
    }

    [Fact]
    public void Slopes_of_a_point_are_those_of_its_curves()
    {
        var table = Nitrogen(284);
        foreach (var bar in (double[])[1.3, 8, 44, 130])
        {
            var log = Math.Log(bar * 1e5);
            const double h = 1e-5;
            var (low, at, high) = (table.At(log - h), table.At(log), table.At(log + h));

            Assert.Equal((high.Work - low.Work) / (2 * h), at.Quotient, tolerance: 1e-4 * at.Quotient);
            Assert.Equal(Math.Log(high.Density / low.Density) / (2 * h), at.DensitySlope, tolerance: 1e-6);
            Assert.Equal(bar * 1e5, at.Density * at.Quotient, tolerance: 1e-9 * bar * 1e5);
        }
    }
}
