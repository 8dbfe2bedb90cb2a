using CsCheck;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Properties.Agents;

/// <summary>A gas that is continued below its critical temperature keeps to thermodynamics, and goes on from where the equation leaves off.</summary>
public class ColdGasLaws
{
    static readonly string[] Ids = ["nitrogen", "argon", "IG-55", "IG-541"];

    // Gas, temperature over the edge's, density over the critical.
    static readonly Gen<(int Gas, double Temperature, double Density)> States =
        Gen.Select(Gen.Int[0, Ids.Length - 1], Gen.Double[0.4, 0.99], Gen.Double[0.01, 0.8]).Select((gas, temperature, density) => (gas, temperature, density));

    [Fact]
    public void Energy_entropy_and_pressure_are_slopes_of_one_free_energy() => States.Sample(state =>
    {
        var fluid = Fluid.Of(Ids[state.Gas]);
        var (temperature, density) = (state.Temperature * fluid.ContinuedBelow, state.Density * fluid.CriticalDensity);
        var (kelvin, kilogram) = (1e-3 * temperature, 1e-3 * density);
        var at = fluid.At(temperature, density);
        var (cold, warm) = (fluid.At(temperature - kelvin, density), fluid.At(temperature + kelvin, density));
        var (thin, dense) = (fluid.At(temperature, density - kilogram), fluid.At(temperature, density + kilogram));
        static double Free(HelmholtzState state, double temperature) => state.Energy - temperature * state.Entropy;
        bool Same(double stated, double slope, double scale) => Math.Abs(stated - slope) < 1e-3 * (scale + Math.Abs(stated));

        var (r, ideal) = (fluid.GasConstant, density * fluid.GasConstant * temperature);
        return Same(at.Pressure, density * density * (Free(dense, temperature) - Free(thin, temperature)) / (2 * kilogram), ideal)
            && Same(-at.Entropy, (Free(warm, temperature + kelvin) - Free(cold, temperature - kelvin)) / (2 * kelvin), r)
            && Same(at.IsochoricHeatCapacity, (warm.Energy - cold.Energy) / (2 * kelvin), r)
            && Same(at.PressurePerKelvin, (warm.Pressure - cold.Pressure) / (2 * kelvin), ideal / temperature)
            && Same(at.PressurePerDensity, (dense.Pressure - thin.Pressure) / (2 * kilogram), ideal / density)
            && Same(at.Enthalpy, at.Energy + at.Pressure / density, r * temperature);
    }, iter: 2_000);

    [Fact]
    public void At_its_edge_it_meets_the_equation() => States.Sample(state =>
    {
        var fluid = Fluid.Of(Ids[state.Gas]);
        var density = state.Density * fluid.CriticalDensity;
        var (below, above) = (fluid.At(fluid.ContinuedBelow * (1 - 1e-9), density), fluid.At(fluid.ContinuedBelow * (1 + 1e-9), density));

        return Math.Abs(below.Pressure / above.Pressure - 1) < 1e-7 && Math.Abs(below.Entropy - above.Entropy) < 1e-4
            && Math.Abs(below.Enthalpy - above.Enthalpy) < 1e-2 && Math.Abs(below.PressurePerKelvin / above.PressurePerKelvin - 1) < 1e-7;
    }, iter: 500);

    // What condensing would change is small while the gas is thin.
    [Theory]
    [InlineData("nitrogen")]
    [InlineData("argon")]
    public void While_it_is_thin_it_is_near_the_equation(string id)
    {
        var fluid = Fluid.Of(id);
        var (temperature, density) = (0.8 * fluid.CriticalTemperature, 0.01 * fluid.CriticalDensity);

        Assert.Equal(fluid.Exact(temperature, density).Pressure, fluid.At(temperature, density).Pressure, tolerance: 0.01 * fluid.Exact(temperature, density).Pressure);
        Assert.Equal(fluid.Exact(temperature, density).Energy, fluid.At(temperature, density).Energy, tolerance: 0.02 * fluid.GasConstant * temperature);
    }
}
