using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Circuits;

/// <summary>Circuits that make no sense: every fault with its place and what would be right.</summary>
public class CircuitFaultTests
{
    [Theory]
    [InlineData("", "[]", "", "is an object with")]
    [InlineData("/battery", "{}", "/battery", "unknown field 'battery'")]
    [InlineData("/source", null, "/source", "missing")]
    [InlineData("/parts", null, "/parts", "missing")]
    [InlineData("/parts", "[]", "/parts", "one entry a name")]
    [InlineData("/chassis", "\"frame\"", "/chassis", "no end of the source or of a part is at that node")]
    [InlineData("/corrosion", "1", "/corrosion", "a bare number")]
    [InlineData("/source/kind", "\"dynamo\"", "/source/kind", "battery, power-pack, capacitor")]
    [InlineData("/source/voltage", "\"0 V\"", "/source/voltage", "over 0 to 1000 V")]
    [InlineData("/source/internalResistance", "\"0 ohm\"", "/source/internalResistance", "0.001 mohm to 1000 kohm")]
    [InlineData("/source/plus", "\"m\"", "/source/plus", "shorts the source")]
    [InlineData("/source/coldVoltage", "\"10 V\"", "/source/coldVoltage", "at most the voltage")]
    [InlineData("/source/highestVoltage", "\"8 V\"", "/source/highestVoltage", "at least the voltage")]
    [InlineData("/source/coldResistance", "\"1 ohm\"", "/source/coldResistance", "at least the internal resistance")]
    [InlineData("/source/capacitance", "\"1 F\"", "/source/capacitance", "only a capacitor has one")]
    [InlineData("/source/kind", "\"capacitor\"", "/source/capacitance", "missing")]
    [InlineData("/parts/key/kind", "\"relay\"", "/parts/key/kind", "one of wire, connector")]
    [InlineData("/parts/key/between", "[\"p\"]", "/parts/key/between", "the two nodes at its ends")]
    [InlineData("/parts/key/between", "[\"p\", \"p\"]", "/parts/key/between", "does nothing")]
    [InlineData("/parts/F", """{ "kind": "resistor", "between": ["p", "aa"], "resistance": "1 ohm" }""", "/parts/F/between/1", "nothing else ends at that node")]
    [InlineData("/parts/key/closedIn", "[]", "/parts/key/closedIn", "0 entries")]
    [InlineData("/parts/key/closedIn", "[\"armed\", \"armed\"]", "/parts/key/closedIn/1", "repeated")]
    [InlineData("/parts/key/closedIn", "[\"fired\"]", "/parts/key/closedIn/0", "one of off, test, armed")]
    [InlineData("/parts/key/length", "\"1 m\"", "/parts/key/length", "a switch has none; only a wire has")]
    [InlineData("/parts/fire/purpose", null, "/parts/fire/purpose", "missing")]
    [InlineData("/parts/fire/allFire", "\"1 A\"", "/parts/fire/allFire", "only an actuator has")]
    [InlineData("/parts/out/length", "\"0 m\"", "/parts/out/length", "over 0 to 1 km")]
    [InlineData("/parts/out/length", null, "/parts/out/length", "missing")]
    [InlineData("/parts/out/crossSection", null, "/parts/out/crossSection", "missing")]
    [InlineData("/parts/out/crossSection", "\"0.75 mm\"", "/parts/out/crossSection", "")]
    [InlineData("/parts/out/cable", "\"lead\"", "/parts/out/cable", "flexible, tinned, road-vehicle")]
    [InlineData("/parts/out/temperature", "\"500 °C\"", "/parts/out/temperature", "-100 to 300 °C")]
    [InlineData("/parts/out/temperatureCoefficient", "0.1", "/parts/out/temperatureCoefficient", "0 to 0.008")]
    [InlineData("/parts/squib/allFire", null, "/parts/squib/allFire", "missing")]
    [InlineData("/parts/squib/noFire", "\"1.5 A\"", "/parts/squib/noFire", "under what is sure to")]
    [InlineData("/parts/squib/resistance", null, "/parts/squib/resistance", "missing")]
    [InlineData("/parts/squib/ratedVoltage", "\"12 V\"", "/parts/squib/ratedVoltage", "a bridgewire has none")]
    [InlineData("/parts/squib/pulse", "\"0 s\"", "/parts/squib/pulse", "over 0 to 3600 s")]
    [InlineData("/parts/squib", null, "/parts", "no actuator")]
    [InlineData("/parts/lamp/tolerance", "0.6", "/parts/lamp/tolerance", "0 to 0.5")]
    [InlineData("/parts/lamp/forwardVoltage", "\"-1 V\"", "/parts/lamp/forwardVoltage", "over 0 to 100 V")]
    [InlineData("/parts/F", """{ "kind": "fuse", "between": ["p", "a"] }""", "/parts/F/rating", "missing")]
    [InlineData("/parts/F", """{ "kind": "resistor", "between": ["p", "a"] }""", "/parts/F/resistance", "missing")]
    [InlineData("/parts/F", """{ "kind": "actuator", "between": ["p", "a"], "type": "solenoid", "resistance": "4 ohm" }""", "/parts/F", "read neither allFire nor ratedVoltage")]
    public void A_wrong_value_is_one_fault(string edit, string? value, string pointer, string words)
    {
        var json = edit == "/parts/squib"
            ? Specimen.With(("/circuit", CircuitDocument.Loop), ("/circuit/parts/squib", """{ "kind": "resistor", "between": ["x", "y"], "resistance": "2 ohm" }"""))
            : Specimen.With(Specimen.With(("/circuit", CircuitDocument.Loop)), "/circuit" + edit, value);

        Specimen.HasOneFault(json, "/circuit" + pointer, words);
    }

    [Theory]
    [InlineData("""{ "kind": "wire", "between": ["t", "x"], "resistance": "0.1 ohm", "length": "1 m" }""", "/length", "not both")]
    [InlineData("""{ "kind": "wire", "between": ["t", "x"], "length": "1 m", "crossSection": "1 mm2", "awg": 18 }""", "/crossSection", "one of these two")]
    [InlineData("""{ "kind": "wire", "between": ["t", "x"], "length": "1 m", "awg": 18.5 }""", "/awg", "a whole number")]
    [InlineData("""{ "kind": "wire", "between": ["t", "x"], "length": "1 m", "awg": 41 }""", "/awg", "0 to 40")]
    [InlineData("""{ "kind": "wire", "between": ["t", "x"], "length": "1 m", "awg": 18, "cable": "tinned" }""", "/cable", "of solid wire")]
    [InlineData("""{ "kind": "wire", "between": ["t", "x"], "resistance": "0 ohm" }""", "/resistance", "0.001 mohm")]
    public void A_wire_that_contradicts_itself_is_one_fault(string wire, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With(("/circuit", CircuitDocument.Loop), ("/circuit/parts/out", wire)), "/circuit/parts/out" + pointer, words);

    [Fact]
    public void Every_fault_is_told_at_once()
    {
        var json = Specimen.With(("/circuit", CircuitDocument.Loop), ("/circuit/source/voltage", "9"), ("/circuit/parts/out/length", "\"0 m\""), ("/circuit/parts/squib/noFire", "\"2 A\""),
            ("/circuit/parts/key/closedIn", "[\"on\"]"), ("/circuit/extra", "1"), ("/runs/0/length", "\"-1 m\""));

        Assert.Equal(
            ["/circuit/extra", "/circuit/parts/key/closedIn/0", "/circuit/parts/out/length", "/circuit/parts/squib/noFire", "/circuit/source/voltage", "/runs/0/length"],
            Specimen.Read(json).Faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_name_of_a_node_that_is_nearly_another_is_asked_about() =>
        Specimen.HasOneFault(Specimen.With(("/circuit", CircuitDocument.Loop.Replace("[\"p\", \"b\"]", "[\"p\", \"bus\"]", StringComparison.Ordinal).Replace("[\"b\", \"t\"]", "[\"buss\", \"t\"]", StringComparison.Ordinal)),
            ("/circuit/parts/extra", """{ "kind": "resistor", "between": ["bus", "m"], "resistance": "1 kohm" }""")), "/circuit/parts/lamp/between/0", "did you mean 'bus'");

    [Fact]
    public void A_whole_circuit_fits_the_schema_and_leaves_the_flow_alone()
    {
        var json = Specimen.With(("/circuit", CircuitDocument.Loop));

        Assert.True(BuiltSchema.Accepts(json));
        Assert.Equal(Specimen.Read(Specimen.Json).Layout!.Assumptions.AsEnumerable(), Specimen.Read(json).Layout!.Assumptions);
        Assert.Null(Specimen.Read(Specimen.Json).Layout!.Circuit);
        Assert.Equal(["/circuit/corrosion", "/circuit/source/coldResistance", "/circuit/source/coldVoltage", "/circuit/source/highestVoltage"],
            Specimen.Read(json).Layout!.Circuit!.Assumptions.Select(assumption => assumption.Pointer).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("/circuit/parts/out/awg", "18")]
    [InlineData("/circuit/parts/key/length", "\"1 m\"")]
    [InlineData("/circuit/source/capacitance", "\"1 F\"")]
    [InlineData("/circuit/parts/squib/allFire", null)]
    [InlineData("/circuit/parts/fire/purpose", null)]
    [InlineData("/circuit/source/kind", "\"capacitor\"")]
    public void What_the_reader_refuses_of_the_members_of_a_kind_the_schema_refuses_too(string pointer, string? value)
    {
        var json = Specimen.With(Specimen.With(("/circuit", CircuitDocument.Loop)), pointer, value);

        Assert.NotEmpty(Specimen.Read(json).Faults);
        Assert.False(BuiltSchema.Accepts(json));
    }
}
