using System.Globalization;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Peers.Agents;

/// <summary>
/// Nitrogen (Span et al. 2000) and argon (Tegeler et al. 1999): states computed by a separate evaluation of the same equations, whose every row agrees with
/// the open CoolProp library (July 2026) to the digits printed. Enthalpy and entropy are differences from 298.15 K and 101 325 Pa.
/// </summary>
public class GasEquationTests
{
    static readonly Dictionary<string, HelmholtzEquation> Equations = new() { ["nitrogen"] = HelmholtzEquation.Of("nitrogen"), ["argon"] = HelmholtzEquation.Of("argon") };

    /// <summary>Gas, then temperature K, pressure Pa, density, enthalpy, entropy, cp, cv, speed of sound.</summary>
    public static TheoryData<string, double[]> States
    {
        get
        {
            using var stream = typeof(GasEquationTests).Assembly.GetManifestResourceStream("Peers/Agents/gases.csv")!;
            using var reader = new StreamReader(stream);
            Assert.Equal("gas,temperature_k,pressure_pa,density_kg_m3,enthalpy_j_kg,entropy_j_kg_k,cp_j_kg_k,cv_j_kg_k,speed_of_sound_m_s", reader.ReadLine());
            var states = new TheoryData<string, double[]>();
            while (reader.ReadLine()?.Split(',') is [var gas, .. var figures])
                states.Add(gas, [.. figures.Select(figure => double.Parse(figure, CultureInfo.InvariantCulture))]);
            return states;
        }
    }

    [Theory]
    [MemberData(nameof(States))]
    public void Every_property_of_a_state_agrees(string gas, double[] expected)
    {
        var equation = Equations[gas];
        var density = Density(equation, expected[0], expected[1]);
        var state = equation.At(expected[0], density);
        var reference = equation.At(298.15, Density(equation, 298.15, 101_325));

        Near(expected[2], density, 1e-8);
        Assert.Equal(expected[3], state.Enthalpy - reference.Enthalpy, tolerance: 1e-6 * 1e5);
        Assert.Equal(expected[4], state.Entropy - reference.Entropy, tolerance: 1e-6 * 1e3);
        Near(expected[5], state.IsobaricHeatCapacity, 1e-6);
        Near(expected[6], state.IsochoricHeatCapacity, 1e-6);
        Near(expected[7], state.SpeedOfSound, 1e-6);
    }

    // Newton on the pressure, whose slope the equation gives.
    static double Density(HelmholtzEquation equation, double temperature, double pressure)
    {
        var density = pressure / (equation.GasConstant * temperature);
        for (var i = 0; i < 100; i++)
        {
            var at = equation.At(temperature, density);
            var step = (pressure - at.Pressure) / at.PressurePerDensity;
            density += step;
            if (Math.Abs(step) < 1e-13 * density) break;
        }
        return density;
    }

    static void Near(double expected, double actual, double within) =>
        Assert.True(Math.Abs(actual / expected - 1) <= within, $"{actual:R} where {expected:R} is right");
}
