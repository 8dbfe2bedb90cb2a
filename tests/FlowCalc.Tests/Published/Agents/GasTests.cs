using FlowCalc.Agents;

namespace FlowCalc.Tests.Published.Agents;

/// <summary>What the papers print of their gases; all figures from memory, texts not seen.</summary>
public class GasTests
{
    // Span et al. 2000: 126.192 K, 3.3958 MPa, 313.3 kg/m³. Tegeler et al. 1999: 150.687 K, 4.863 MPa, 535.6 kg/m³.
    [Theory]
    [InlineData("nitrogen", 126.192, 313.3, 3.3958e6)]
    [InlineData("argon", 150.687, 535.6, 4.863e6)]
    public void At_the_critical_point_pressure_stands_still_at_the_critical_pressure(string id, double temperature, double density, double pressure)
    {
        var state = HelmholtzEquation.Of(id).At(temperature, density);

        Assert.Equal(pressure, state.Pressure, tolerance: 50);     // half of the last digit printed
        Assert.Equal(0, state.PressurePerDensity * density / pressure, tolerance: 1e-6);
    }

    // Saturated at 1 atm, the normal boiling point: densities of liquid and vapour, kg/m³.
    [Theory]
    [InlineData("nitrogen", 77.355, 806.08, 4.6122)]
    [InlineData("argon", 87.302, 1395.4, 5.772)]
    public void At_the_normal_boiling_point_both_phases_have_one_pressure_and_one_free_enthalpy(string id, double temperature, double liquidDensity, double vapourDensity)
    {
        var equation = HelmholtzEquation.Of(id);

        var (liquid, vapour) = (equation.At(temperature, liquidDensity), equation.At(temperature, vapourDensity));

        // The density at 1 atm, a Newton step from the print: within its last digits (argon's vapour was recalled to four).
        Assert.Equal(vapourDensity, vapourDensity + (101_325 - vapour.Pressure) / vapour.PressurePerDensity, tolerance: 4e-4 * vapourDensity);
        Assert.Equal(liquidDensity, liquidDensity + (101_325 - liquid.Pressure) / liquid.PressurePerDensity, tolerance: 1e-5 * liquidDensity);
        var difference = liquid.Enthalpy - vapour.Enthalpy - temperature * (liquid.Entropy - vapour.Entropy)
            + (101_325 - liquid.Pressure) / liquidDensity - (101_325 - vapour.Pressure) / vapourDensity;
        Assert.Equal(0, difference / (equation.GasConstant * temperature), tolerance: 1e-4);     // as much as the last digit of the temperature moves it
    }

    // Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, check values at no density: viscosity µPa·s, conductivity mW/(m·K).
    [Theory]
    [InlineData("nitrogen", 100, 6.90349, 9.27749)]
    [InlineData("nitrogen", 300, 17.8771, 25.9361)]
    [InlineData("argon", 100, 8.18940, 6.36587)]
    [InlineData("argon", 300, 22.7241, 17.8042)]
    [InlineData("air", 100, 7.09559, 9.35902)]
    [InlineData("air", 300, 18.5230, 26.3529)]
    public void Viscosity_and_conductivity_of_the_dilute_gas_are_those_printed(string id, double temperature, double viscosity, double conductivity)
    {
        var transport = id switch { "nitrogen" => GasTransport.Nitrogen, "argon" => GasTransport.Argon, _ => GasTransport.Air };

        Assert.Equal(viscosity, 1e6 * transport.Viscosity(temperature), tolerance: 1e-5 * viscosity);
        Assert.Equal(conductivity, 1e3 * transport.Conductivity(temperature), tolerance: 1e-5 * conductivity);
    }

    // Compressibility factor of air as tabulated in Perry's Chemical Engineers' Handbook; last, the excess of pressure at that density in per cent that the doc of air states.
    [Theory]
    [InlineData(300, 20, 0.9950, 0.3)]
    [InlineData(300, 40, 0.9917, 0.5)]
    [InlineData(300, 100, 0.9930, 1.3)]
    [InlineData(300, 300, 1.1089, 4.3)]
    [InlineData(250, 20, 0.9822, 0.4)]
    [InlineData(250, 40, 0.9671, 0.7)]
    [InlineData(250, 100, 0.9411, 1.9)]
    [InlineData(250, 300, 1.0702, 6.5)]
    public void Air_as_nitrogen_by_the_mole_is_out_by_what_it_states(double temperature, double bar, double compressibility, double excessPercent)
    {
        var density = bar * 1e5 / (compressibility * RealGas.Air.GasConstant * temperature);

        Assert.Equal(excessPercent, 100 * (RealGas.Air.At(temperature, density).Pressure / (bar * 1e5) - 1), tolerance: 0.11);
    }
}
