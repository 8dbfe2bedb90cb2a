using FlowCalc.Circuits;
using FlowCalc.Tests.Circuits;

namespace FlowCalc.Tests.ClosedForms.Circuits;

/// <summary>Firing loops worked out by hand with Ohm's law, from the resistances of IEC 60228 (second-hand) and R = R20·(1 + 0.00393·(t − 20 °C)).</summary>
public class FiringLoopTests
{
    const double Relative = 1e-6;

    static void AssertClose(double expected, double actual) => Assert.Equal(expected, actual, tolerance: Relative * Math.Abs(expected));

    // 9 V behind 1.7 Ω, 2 × 4 m of 0.75 mm2 at 85 °C, contacts 0.04 Ω, switch 0.05 Ω, bridgewire 2 Ω.
    [Fact]
    public void One_bridgewire_in_a_hot_loop_gets_what_the_sum_of_the_resistances_lets_pass()
    {
        var result = CircuitDocument.Solve(CircuitDocument.Loop, ("/parts/key/resistance", "\"40 mohm\""));

        var press = Assert.Single(result.Presses);
        AssertClose(2.2216004, press.Currents.Source);
        AssertClose(0.06445939, press.Shares!.Wires);
        AssertClose(1.4810669, press.Currents.Source / 1.5);
        Assert.Equal(1, press.Shares.Source + press.Shares.Wires + press.Shares.Contacts + press.Shares.Actuators + press.Shares.Others, tolerance: 1e-12);
    }

    const string Crank = """{ "kind": "battery", "minus": "m", "plus": "p", "voltage": "9.6 V", "internalResistance": "20 mohm" }""";
    const string Second = """{ "kind": "actuator", "between": ["x", "y"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1.5 A", "noFire": "0.3 A" }""";

    [Fact]
    public void Two_in_parallel_get_half_of_the_current_each()
    {
        var result = CircuitDocument.Solve(CircuitDocument.Loop, ("/source", Crank), ("/parts/key/resistance", "\"40 mohm\""), ("/parts/other", Second));

        var press = Assert.Single(result.Presses);
        AssertClose(7.0015059, press.Currents.Source);
        Assert.All(press.Fired, index => AssertClose(3.500753, Math.Abs(press.Currents.Parts[index])));
        Assert.Equal(2, press.Fired.Length);
        Assert.Empty(press.CutOff);
    }

    [Fact]
    public void Two_in_series_get_the_same_and_the_first_to_open_cuts_the_other_off()
    {
        var result = CircuitDocument.Solve(CircuitDocument.Loop, ("/source", Crank), ("/parts/key/resistance", "\"40 mohm\""),
            ("/parts/squib/between", """["x", "z"]"""), ("/parts/other", Second.Replace("\"x\"", "\"z\"", StringComparison.Ordinal)));

        var press = Assert.Single(result.Presses);
        AssertClose(2.1962266, press.Currents.Source);
        Assert.Equal(press.Fired, press.CutOff);
        Assert.Equal(2, press.Fired.Length);
    }

    // 12 V, 1 kΩ and a diode of 1.8 V before 2 Ω: (12 − 1.8)/1002; shorted, the resistor 5 % low and 14.5 V: 14.5/952.
    [Fact]
    public void The_test_current_is_that_of_the_lamp_and_in_its_worst_failure_that_of_its_resistor_alone()
    {
        var circuit = """
            { "source": { "kind": "power-pack", "minus": "m", "plus": "p", "voltage": "12 V", "highestVoltage": "14.5 V", "internalResistance": "0.001 mohm" },
              "parts": {
                "try": { "kind": "push", "between": ["p", "b"], "purpose": "test", "resistance": "0.001 mohm" },
                "lamp": { "kind": "lamp", "between": ["b", "x"], "resistance": "1000 ohm", "forwardVoltage": "1.8 V", "tolerance": 0.05 },
                "squib": { "kind": "actuator", "between": ["x", "m"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1.5 A", "noFire": "0.3 A" } } }
            """;

        var result = CircuitDocument.Solve(circuit);

        AssertClose(0.010179641, result.Rows.Max(row => row.Lamps[0].Lowest));
        var test = Assert.Single(result.TestCurrents);
        AssertClose(0.015231092, test.Current);
        AssertClose(0.030, test.Limit);
        AssertClose((14.5 - 1.8) / 1002, test.Sound);
    }

    // 6 A over 2 × 6 m at 85 °C: the first size of the standard with at most 5 % of 12 V is 4 mm2.
    [Theory]
    [InlineData("0.5 mm2", 3.5253036)]
    [InlineData("0.75 mm2", 2.3502024)]
    [InlineData("1 mm2", 1.7626518)]
    [InlineData("1.5 mm2", 1.2022189)]
    [InlineData("2.5 mm2", 0.72133135)]
    [InlineData("4 mm2", 0.44744238)]
    public void The_drop_over_a_wire_is_its_current_times_its_warm_resistance(string size, double volts)
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, ("/parts/out/crossSection", $"\"{size}\""), ("/parts/out/length", "\"12 m\"")).Circuit!;

        AssertClose(volts, 6 * circuit.Of<Wire>().First().Part.Resistance.Ohms);
    }

    // ½CU² = 10 mJ·… of 4700 µF at 12 V through 1 Ω of its own and 2 Ω: τ = 3·C, i0 = 4 A; E = i0²·R·τ/2.
    [Fact]
    public void A_capacitor_gives_an_actuator_its_part_of_half_the_voltage_squared_times_capacitance()
    {
        var circuit = """
            { "source": { "kind": "capacitor", "minus": "m", "plus": "p", "voltage": "12 V", "internalResistance": "0.95 ohm", "capacitance": "4700 µF" },
              "parts": {
                "fire": { "kind": "push", "between": ["p", "x"], "purpose": "fire", "resistance": "50 mohm" },
                "squib": { "kind": "actuator", "between": ["x", "m"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1.5 A", "noFire": "0.3 A", "pulse": "10 ms", "allFireEnergy": "5 mJ" } } }
            """;

        var pulse = Assert.Single(CircuitDocument.Solve(circuit).Pulses);

        AssertClose(3 * 4700e-6, pulse.TimeConstant);
        AssertClose(4700e-6 * 144 / 2 * 2 / 3, pulse.Energy);
        AssertClose(3 * 4700e-6 * Math.Log(4 / 1.5), pulse.Above);
    }
}
