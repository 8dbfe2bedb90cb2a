using System.Globalization;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Peers.Agents;

/// <summary>
/// Carbon dioxide (Span, Wagner 1996), HFC-227ea (Lemmon, Span 2015), HFC-125 (Lemmon, Jacobsen 2005), HFC-23 (Penoncello et al. 2003), HFC-236fa (Pan et al. 2012) and
/// FK-5-1-12 (McLinden et al. 2015): states computed by a separate evaluation of the same equations, whose every row agrees with the open CoolProp library (July
/// 2026) to the digits printed. Enthalpy and entropy are differences from the saturated liquid at 273.15 K.
/// </summary>
public sealed class FluidEquationTests
{
    // Beside the critical point the last digits of the equation decide.
    const double Usual = 1e-6, NearCritical = 1e-4;

    /// <summary>Fluid, phase, whether saturated, whether near the critical point, then temperature K, pressure Pa, density, enthalpy, entropy, cp, cv, speed of sound.</summary>
    public static TheoryData<string, string, bool, bool, double[]> States
    {
        get
        {
            using var stream = typeof(FluidEquationTests).Assembly.GetManifestResourceStream("Peers/Agents/fluids.csv")!;
            using var reader = new StreamReader(stream);
            Assert.StartsWith("fluid,kind,temperature_k,pressure_pa,density_kg_m3", reader.ReadLine());
            var states = new TheoryData<string, string, bool, bool, double[]>();
            while (reader.ReadLine()?.Split(',') is [var fluid, var kind, .. var rest])
                states.Add(fluid, rest[^3], kind == "saturation", rest[^1] == "near-critical", [.. rest[..8].Select(figure => double.Parse(figure, CultureInfo.InvariantCulture))]);
            return states;
        }
    }

    [Theory]
    [MemberData(nameof(States))]
    public void Every_property_of_a_state_agrees(string id, string phase, bool isSaturated, bool isNearCritical, double[] expected)
    {
        var fluid = Fluid.Of(id);
        var within = isNearCritical ? NearCritical : Usual;
        var (temperature, pressure) = (expected[0], expected[1]);
        var density = isSaturated ? Saturated(fluid, phase, temperature, pressure) : Single(fluid, phase, temperature, pressure);
        var state = fluid.Exact(temperature, density);
        var zero = fluid.ExactSaturation(273.15);

        Near(expected[2], density, isNearCritical ? NearCritical : 1e-8);
        Assert.Equal(expected[3], state.Enthalpy - zero.LiquidEnthalpy, tolerance: within * 1e5);
        Assert.Equal(expected[4], state.Entropy - zero.LiquidEntropy, tolerance: within * 1e3);
        Near(expected[5], state.IsobaricHeatCapacity, within);
        Near(expected[6], state.IsochoricHeatCapacity, within);
        Near(expected[7], state.SpeedOfSound, within);
    }

    [Theory]
    [MemberData(nameof(States))]
    public void The_fast_forms_are_within_a_ten_thousandth(string id, string phase, bool isSaturated, bool isNearCritical, double[] expected)
    {
        var fluid = Fluid.Of(id);
        var (temperature, pressure) = (expected[0], expected[1]);
        if (isSaturated)
        {
            // The curve is asked colder and hotter than any bottle only in its own tests.
            if (temperature < fluid.Saturation!.LowestTemperature || temperature > 0.995 * fluid.CriticalTemperature) return;
            var point = fluid.Saturation.AtTemperature(temperature);
            Near(pressure, point.Pressure, 1e-5);
            Near(expected[2], phase == "liquid" ? point.LiquidDensity : point.VapourDensity, 1e-5);
            var zero = fluid.ExactSaturation(273.15);
            Assert.Equal(expected[3], (phase == "liquid" ? point.LiquidEnthalpy : point.VapourEnthalpy) - zero.LiquidEnthalpy, tolerance: 2);
            return;
        }
        if (isNearCritical || temperature > 450 || temperature < fluid.Saturation!.LowestTemperature) return;
        var exact = fluid.Exact(temperature, expected[2]);
        var fast = fluid.At(temperature, expected[2]);
        // A liquid's pressure is the small difference of large parts: what counts is the density that it gives.
        Near(expected[2], expected[2] + (exact.Pressure - fast.Pressure) / exact.PressurePerDensity, 1e-4);
        Assert.Equal(exact.Enthalpy, fast.Enthalpy, tolerance: 1e-4 * 1e5);
        Near(exact.SpeedOfSound, fast.SpeedOfSound, 1e-3);
    }

    static double Saturated(Fluid fluid, string phase, double temperature, double pressure)
    {
        var point = fluid.ExactSaturation(temperature);
        Near(pressure, point.Pressure, temperature > 0.97 * fluid.CriticalTemperature ? 1e-6 : 1e-8);
        return phase == "liquid" ? point.LiquidDensity : point.VapourDensity;
    }

    static double Single(Fluid fluid, string phase, double temperature, double pressure) =>
        phase == "vapour" ? fluid.GasDensity(temperature, pressure)
        : phase == "liquid" ? fluid.LiquidDensity(temperature, pressure)
        : Supercritical(fluid, temperature, pressure);

    // The liquid's side of a dense fluid, the gas's side of a thin one.
    static double Supercritical(Fluid fluid, double temperature, double pressure) =>
        fluid.GasDensity(temperature, pressure) is var gas && double.IsFinite(gas) ? gas : fluid.LiquidDensity(temperature, pressure);

    static void Near(double expected, double actual, double within) =>
        Assert.Equal(expected, actual, tolerance: within * Math.Abs(expected));
}
