using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Tests.Circuits;

/// <summary>State tables, lamps and single faults.</summary>
public class CircuitTests
{
    static readonly (string, string?)[] Chassis = [("/chassis", "\"m\"")];

    static FaultCase Fault(CircuitResult result, Circuit circuit, CircuitFaultKind kind, string place) =>
        result.Faults.Single(fault => fault.Fault.Kind == kind && (kind == CircuitFaultKind.Chassis ? circuit.Nodes[fault.Fault.Place] : circuit.Parts[fault.Fault.Place].Name) == place);

    [Fact]
    public void The_state_table_has_every_state_with_nothing_and_with_each_push_and_fires_in_one_row_alone()
    {
        var result = CircuitDocument.Solve(CircuitDocument.Loop);

        Assert.Equal(6, result.Rows.Length);
        Assert.All(result.Rows, row => Assert.Equal(row is { State: CircuitState.Armed, Push: >= 0 }, row.Actuators[0].Lowest >= 1.5));
        Assert.All(result.Rows, row => Assert.Equal(row.State == CircuitState.Test, row.Lamps[0].Lowest > 0.002));
        Assert.All(result.Rows.Where(row => row.State == CircuitState.Off), row => Assert.Equal(0, row.SourceHighest));
    }

    [Fact]
    public void An_open_wire_stops_firing_and_the_lamp_shows_it()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, Chassis).Circuit!;
        var fault = Fault(CircuitAnalysis.Of(circuit, TestContext.Current.CancellationToken), circuit, CircuitFaultKind.Open, "out");

        Assert.True(fault.KeepsFromFiring);
        Assert.True(fault.IsShown);
        Assert.False(fault.FiresUnasked);
    }

    [Fact]
    public void A_shorted_trigger_stops_firing_and_no_lamp_shows_it()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, Chassis).Circuit!;
        var result = CircuitAnalysis.Of(circuit, TestContext.Current.CancellationToken);

        var fault = Fault(result, circuit, CircuitFaultKind.Chassis, "x");
        Assert.True(fault.KeepsFromFiring);
        Assert.False(fault.IsShown);
        Assert.False(Fault(result, circuit, CircuitFaultKind.Chassis, "y").KeepsFromFiring);
        Assert.DoesNotContain(result.Faults, one => one.Fault.Kind == CircuitFaultKind.Chassis && circuit.Nodes[one.Fault.Place] == "m");
    }

    [Fact]
    public void Where_the_chassis_is_on_the_way_a_touch_past_the_switches_fires()
    {
        // The actuator is switched on its minus side: its plus is always there, and a touch behind it closes the loop.
        var circuit = """
            { "chassis": "m", "source": { "kind": "battery", "minus": "m", "plus": "p", "voltage": "12 V", "internalResistance": "20 mohm" },
              "parts": {
                "squib": { "kind": "actuator", "between": ["p", "x"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1.5 A", "noFire": "0.3 A" },
                "fire": { "kind": "push", "between": ["x", "m"], "purpose": "fire" } } }
            """;
        var read = CircuitDocument.Read(circuit).Circuit!;

        Assert.True(Fault(CircuitAnalysis.Of(read, TestContext.Current.CancellationToken), read, CircuitFaultKind.Chassis, "x").FiresUnasked);
    }

    [Fact]
    public void A_corroded_contact_takes_current_that_the_lamp_does_not_miss()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, ("/corrosion", "\"3 ohm\"")).Circuit!;
        var result = CircuitAnalysis.Of(circuit, TestContext.Current.CancellationToken);
        var fault = Fault(result, circuit, CircuitFaultKind.Corroded, "key");

        Assert.Equal(result.Presses[0].Currents.SourceVoltage / (9 / result.Presses[0].Currents.Source + 3) / 1.5, fault.Margin!.Value, tolerance: 1e-9);
        Assert.True(fault.KeepsFromFiring);
        Assert.False(fault.IsShown);
    }

    [Fact]
    public void A_diode_turned_round_lets_nothing_pass_and_a_filament_does()
    {
        var turned = CircuitDocument.Solve(CircuitDocument.Loop, ("/parts/lamp/between", """["t", "b"]"""));
        var filament = CircuitDocument.Solve(CircuitDocument.Loop, ("/parts/lamp/between", """["t", "b"]"""), ("/parts/lamp/forwardVoltage", null));

        Assert.All(turned.Rows, row => Assert.Equal(0, row.Lamps[0].Highest));
        Assert.True(filament.Rows.Max(row => row.Lamps[0].Lowest) > 0.008);
    }

    // Two diodes against each other, each from a source of its own side, beside one that conducts: every way of standing but one is wrong.
    [Fact]
    public void Of_several_diodes_those_conduct_that_can()
    {
        var result = CircuitDocument.Solve(CircuitDocument.Loop,
            ("/parts/second", """{ "kind": "lamp", "between": ["b", "t"], "resistance": "1 kohm", "forwardVoltage": "8.95 V" }"""),
            ("/parts/third", """{ "kind": "lamp", "between": ["t", "b"], "resistance": "1 kohm", "forwardVoltage": "1 V" }"""),
            ("/parts/fourth", """{ "kind": "lamp", "between": ["b", "t"], "resistance": "100 ohm", "forwardVoltage": "20 V" }"""));

        var row = result.Rows.Single(row => row is { State: CircuitState.Test, Push: -1 });
        Assert.True(row.Lamps.Single(lamp => lamp.Lowest > 0.005).Lowest < 0.008);
        Assert.Equal(2, row.Lamps.Count(lamp => lamp.Lowest == 0));
        Assert.Single(row.Lamps, lamp => lamp.Lowest is > 0 and < 1e-4);
    }

    [Fact]
    public void The_order_of_parts_moves_no_figure_but_its_last_digits()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, Chassis).Circuit!;
        var turned = circuit with { Parts = [.. circuit.Parts.Reverse()] };
        var (one, other) = (CircuitAnalysis.Of(circuit, TestContext.Current.CancellationToken), CircuitAnalysis.Of(turned, TestContext.Current.CancellationToken));

        Assert.Equal(one.Presses[0].Currents.Source, other.Presses[0].Currents.Source, tolerance: 1e-12);
        Assert.Equal(one.TestCurrents[0].Current, other.TestCurrents[0].Current, tolerance: 1e-12);
        Assert.Equal(one.Faults.Count(fault => fault.KeepsFromFiring), other.Faults.Count(fault => fault.KeepsFromFiring));
        Assert.Equal(one.Faults.Count(fault => fault.IsShown), other.Faults.Count(fault => fault.IsShown));
    }

    [Fact]
    public void The_same_circuit_gives_the_same_answer_to_the_last_bit()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, Chassis).Circuit!;
        var (one, other) = (CircuitAnalysis.Of(circuit, TestContext.Current.CancellationToken), CircuitAnalysis.Of(circuit, TestContext.Current.CancellationToken));

        Assert.Equal(one.Faults.AsEnumerable(), other.Faults);
        Assert.Equal(one.TestCurrents.AsEnumerable(), other.TestCurrents);
    }

    [Fact]
    public void Sixty_parts_and_eight_pushes_are_answered()
    {
        var parts = string.Join(", ", Enumerable.Range(0, 43).Select(at => $$"""
            "c{{at}}": { "kind": "connector", "between": ["n{{at}}", "n{{at + 1}}"] }
            """).Concat(Enumerable.Range(0, 8).Select(at => $$"""
            "f{{at}}": { "kind": "push", "between": ["p", "n0"], "purpose": "fire" }
            """)).Concat(Enumerable.Range(0, 8).Select(at => $$"""
            "l{{at}}": { "kind": "lamp", "between": ["p", "n0"], "resistance": "{{1000 + at}} ohm", "forwardVoltage": "1.8 V" }
            """)));

        var result = CircuitDocument.Solve($$"""
            { "chassis": "m", "source": {{CircuitDocument.Battery}}, "parts": { {{parts}},
              "squib": { "kind": "actuator", "between": ["n43", "m"], "type": "pyrotechnic", "resistance": "2 ohm", "allFire": "1 A", "noFire": "0.3 A" } } }
            """);

        Assert.Equal(27, result.Rows.Length);
        Assert.All(result.Rows, row => Assert.True(double.IsFinite(row.SourceHighest)));
    }

    [Fact]
    public void A_cancelled_analysis_ends()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop).Circuit!;

        Assert.Throws<OperationCanceledException>(() => CircuitAnalysis.Of(circuit, new CancellationToken(canceled: true)));
    }

    [Fact]
    public void A_wire_has_the_resistance_of_its_length_size_and_temperature()
    {
        var circuit = CircuitDocument.Read(CircuitDocument.Loop, ("/parts/out/crossSection", null), ("/parts/out/cable", null), ("/parts/out/awg", "18")).Circuit!;

        Assert.Equal(4 * 0.020947775 * (1 + 0.00393 * 65), circuit.Of<Wire>().First().Part.Resistance.Ohms, tolerance: 1e-9);
        Assert.Equal(ElectricResistance.FromOhms(1), circuit.Corrosion);
    }
}
