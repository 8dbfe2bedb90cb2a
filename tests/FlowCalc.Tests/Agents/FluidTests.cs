using FlowCalc.Agents;

namespace FlowCalc.Tests.Agents;

/// <summary>What a fluid's fast forms are good for, and how it behaves at the edges of its range.</summary>
public sealed class FluidTests
{
    public static TheoryData<string> Condensing => ["carbon-dioxide", "HFC-227ea", "HFC-125", "HFC-23", "HFC-236fa", "FK-5-1-12"];

    [Theory]
    [MemberData(nameof(Condensing))]
    public void The_curve_of_saturation_is_within_three_millionths_of_the_equation_to_995_thousandths_of_the_critical_temperature(string id)
    {
        var fluid = Fluid.Of(id);
        var curve = fluid.Saturation!;
        var highest = 0.995 * fluid.CriticalTemperature;
        for (var i = 0; i < 301; i++)
        {
            var temperature = curve.LowestTemperature + (highest - curve.LowestTemperature) * (i + 0.37) / 301.4;
            var (exact, fast) = (fluid.ExactSaturation(temperature), curve.AtTemperature(temperature));
            Near(exact.Pressure, fast.Pressure, 3e-6);
            Near(exact.LiquidDensity, fast.LiquidDensity, 3e-6);
            Near(exact.VapourDensity, fast.VapourDensity, 3e-6);
            Assert.Equal(exact.LiquidEnthalpy, fast.LiquidEnthalpy, tolerance: 0.1);
            Assert.Equal(exact.VapourEnthalpy, fast.VapourEnthalpy, tolerance: 0.1);
            Assert.Equal(exact.LiquidEntropy, fast.LiquidEntropy, tolerance: 1e-3);
            Assert.Equal(exact.VapourEntropy, fast.VapourEntropy, tolerance: 1e-3);
            var back = curve.AtPressure(exact.Pressure);
            Assert.Equal(temperature, back.Temperature, tolerance: 1e-4);
            Near(exact.LiquidDensity, back.LiquidDensity, 1e-5);
        }
    }

    [Theory]
    [MemberData(nameof(Condensing))]
    public void Outside_its_range_the_curve_says_nothing(string id)
    {
        var curve = Fluid.Of(id).Saturation!;
        Assert.True(double.IsNaN(curve.AtTemperature(curve.HighestTemperature + 1).Pressure));
        Assert.True(double.IsNaN(curve.AtTemperature(curve.LowestTemperature - 1).Pressure));
        Assert.True(double.IsNaN(curve.AtPressure(curve.HighestPressure * 1.01).LiquidDensity));
        Assert.True(double.IsNaN(Fluid.Of(id).At(500, 10).Pressure));
    }

    [Theory]
    // Bottles of inert gas at 15 °C, bar absolute and kg/m³, by a separate evaluation of the same equations.
    [InlineData("nitrogen", 200, 223.2)]
    [InlineData("nitrogen", 300, 308.3)]
    [InlineData("argon", 200, 356.0)]
    [InlineData("argon", 300, 510.0)]
    public void Inert_gas_in_a_bottle_has_the_density_of_a_separate_evaluation(string id, double bar, double density) =>
        Assert.Equal(density, Fluid.Of(id).GasDensity(288.15, bar * 1e5), tolerance: 0.06);

    [Theory]
    [InlineData("IG-55", 0.02)]
    [InlineData("IG-541", 0.05)]
    public void A_blend_is_near_the_volumes_of_its_components_added_up(string id, double within)
    {
        // Additive volumes (Amagat) at one temperature and pressure, over the critical temperature of carbon dioxide so that nothing condenses.
        var blend = HelmholtzBlend.Of(id)!;
        foreach (var bar in (double[])[50, 150, 200, 300])
        {
            var (temperature, pressure) = (313.15, bar * 1e5);
            var added = blend.Components.Sum(component => component.Part * component.Equation.MolarMass / Fluid.Of(component.Id).GasDensity(temperature, pressure));
            var own = blend.MolarMass / Fluid.Of(id).GasDensity(temperature, pressure);
            Near(added, own, within);
        }
    }

    [Theory]
    [InlineData("IG-55")]
    [InlineData("IG-541")]
    public void A_blend_of_one_gas_with_itself_would_be_that_gas_and_a_thin_blend_is_ideal(string id)
    {
        var fluid = Fluid.Of(id);
        var state = fluid.Exact(288.15, 0.01);
        Near(0.01 * fluid.GasConstant * 288.15, state.Pressure, 1e-4);
        var parts = HelmholtzBlend.Of(id)!.Components.Sum(one => one.Part * one.Equation.MolarMass * one.Equation.At(288.15, 0.01).IsobaricHeatCapacity) / fluid.MolarMass;
        Near(parts, state.IsobaricHeatCapacity, 1e-4);
    }

    [Theory]
    // °C, bar absolute: a bottle of carbon dioxide filled to 680 kg/m³, liquid-full, by a separate evaluation.
    [InlineData("carbon-dioxide", 680, 40, 109.2)]
    [InlineData("carbon-dioxide", 680, 65, 193.8)]
    [InlineData("carbon-dioxide", 750, 50, 175.4)]
    [InlineData("HFC-23", 860, 50, 134.2)]
    [InlineData("HFC-23", 860, 65, 179.9)]
    public void A_full_bottle_has_the_pressure_of_one_phase(string id, double fill, double celsius, double bar)
    {
        Near(bar * 1e5, Fluid.Of(id).Exact(273.15 + celsius, fill).Pressure, 5e-4);
        Near(bar * 1e5, Fluid.Of(id).At(273.15 + celsius, fill).Pressure, 7e-4);
    }

    [Theory]
    // Saturated vapour near 1 bar, mPa·s, of the sources in saturated-viscosities.csv.
    [InlineData("carbon-dioxide", 230, 0.011576)]
    [InlineData("HFC-125", 230, 0.0099222)]
    [InlineData("HFC-23", 230, 0.011616)]
    public void The_estimate_of_a_thin_gas_s_viscosity_is_within_a_tenth(string id, double kelvin, double viscosity) =>
        Near(viscosity * 1e-3, Fluid.Of(id).GasViscosity(kelvin), 0.1);

    static void Near(double expected, double actual, double within) => Assert.Equal(expected, actual, tolerance: within * Math.Abs(expected));
}
