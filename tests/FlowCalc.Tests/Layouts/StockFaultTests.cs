namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of tubes, nozzles, fittings and zones.</summary>
public class StockFaultTests
{
    [Theory]
    [InlineData("/tubes", "[]", "/tubes", "one entry a name")]
    [InlineData("/tubes/thin", "{}", "/tubes/thin/bore", "missing: a bore, 0.001 mm to 1 m, or outsideDiameter and wall")]
    [InlineData("/tubes/thin/bore", "\"0 mm\"", "/tubes/thin/bore", "0.001 mm to 1 m")]
    [InlineData("/tubes/thin/bore", "\"1001 mm\"", "/tubes/thin/bore", "0.001 mm to 1 m")]
    [InlineData("/tubes/thin/bore", "\"-4 mm\"", "/tubes/thin/bore", "0.001 mm to 1 m")]
    [InlineData("/tubes/thin/wall", "\"1 mm\"", "/tubes/thin/wall", "or bore alone")]
    [InlineData("/tubes/trunk/wall", "\"5 mm\"", "/tubes/trunk/wall", "leaves a bore of 0 mm")]
    [InlineData("/tubes/trunk/wall", null, "/tubes/trunk/wall", "missing")]
    [InlineData("/tubes/trunk/outsideDiameter", null, "/tubes/trunk/outsideDiameter", "missing")]
    [InlineData("/tubes/trunk/roughness", "\"0.5 mm\"", "/tubes/trunk/roughness", "0 to 5 % of the bore")]
    [InlineData("/tubes/trunk/roughness", "\"-1 µm\"", "/tubes/trunk/roughness", "0 to 5 % of the bore")]
    [InlineData("/tubes/trunk/minimumBendRadius", "\"3 mm\"", "/tubes/trunk/minimumBendRadius", "half the bore of 8 mm or more")]
    [InlineData("/tubes/trunk/workingPressure", "\"60\"", "/tubes/trunk/workingPressure", "the unit is missing")]
    [InlineData("/tubes/trunk/material", "3", "/tubes/trunk/material", "is text")]
    [InlineData("/tubes/thin", """{ "bore": "0.02 mm" }""", "/tubes/thin/roughness", "over 5 % of this bore")]
    [InlineData("/nozzles/fan/kFactor", "\"0 L/min/bar^0.5\"", "/nozzles/fan/kFactor", "a K-factor is 0.000001 to 1000000 L/min/bar^0.5")]
    [InlineData("/nozzles/fan/kFactor", "\"1.5 L/min\"", "/nozzles/fan/kFactor", "is a unit of volume flow")]
    [InlineData("/nozzles/fan/kFactor", null, "/nozzles/fan", "neither kFactor nor orifice")]
    [InlineData("/nozzles/jet/kFactor", "\"1.5 L/min/bar^0.5\"", "/nozzles/jet", "both kFactor and orifice")]
    [InlineData("/nozzles/jet/orifice/diameter", "\"0 mm\"", "/nozzles/jet/orifice/diameter", "0.001 mm to 1 m")]
    [InlineData("/nozzles/jet/orifice/dischargeCoefficient", "0", "/nozzles/jet/orifice/dischargeCoefficient", "0.000001 to 1")]
    [InlineData("/nozzles/jet/orifice/dischargeCoefficient", "1.01", "/nozzles/jet/orifice/dischargeCoefficient", "0.000001 to 1")]
    [InlineData("/nozzles/jet/orifice/dischargeCoefficient", null, "/nozzles/jet/orifice/dischargeCoefficient", "missing")]
    [InlineData("/nozzles/jet/orifice/count", "10001", "/nozzles/jet/orifice/count", "1 to 10000")]
    [InlineData("/nozzles/fan/pressureRange", "[\"3 bar\"]", "/nozzles/fan/pressureRange", "the least and the most")]
    [InlineData("/nozzles/fan/pressureRange", "[\"16 bar\", \"3 bar\"]", "/nozzles/fan/pressureRange", "the least pressure comes first")]
    [InlineData("/nozzles/fan/pressureRange", "[\"-0.1 bar\", \"3 bar\"]", "/nozzles/fan/pressureRange/0", "not under the ambient pressure")]
    [InlineData("/nozzles/fan/spray", "\"cone\"", "/nozzles/fan/spray", "a spray is an object")]
    [InlineData("/fittings/panel/kind", null, "/fittings/panel/kind", "missing")]
    [InlineData("/fittings/panel/length", null, "/fittings/panel/length", "the length of its bore")]
    [InlineData("/fittings/panel/kv", "\"2 m3/h\"", "/fittings/panel/kv", "one of lossCoefficient, kv, and bore with length")]
    [InlineData("/fittings/panel/lossCoefficient", "1", "/fittings/panel/lossCoefficient", "one of lossCoefficient, kv, and bore with length")]
    [InlineData("/fittings/panel", """{ "kind": "valve", "kv": "2 m3/h", "lossCoefficient": 1 }""", "/fittings/panel/kv", "one of lossCoefficient")]
    [InlineData("/fittings/panel", """{ "kind": "valve", "lossCoefficient": -1 }""", "/fittings/panel/lossCoefficient", "0 to 1000000000")]
    [InlineData("/fittings/panel", """{ "kind": "elbow", "angle": "170 °" }""", "/fittings/panel/angle", "over 0 to 150°")]
    [InlineData("/fittings/panel", """{ "kind": "union", "angle": "90 °" }""", "/fittings/panel/angle", "only an elbow")]
    [InlineData("/zones/right/share", "0", "/zones/right/share", "over 0 to 1")]
    [InlineData("/zones/right/share", "\"50 %\"", "/zones/right/share", "a bare number")]
    [InlineData("/zones/right/share", "0.6", "/zones", "add up to 1.1")]
    [InlineData("/zones/right/occupied", "1", "/zones/right/occupied", "true or false")]
    [InlineData("/zones/spare", """{ "share": 0.1 }""", "/zones/spare/share", "no nozzle names it")]
    [InlineData("/zones/right/people", "2", "/zones/right/people", "unknown field 'people' of a zone")]
    public void A_wrong_entry_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With((edit, value)), pointer, words);

    [Fact]
    public void An_entry_that_cannot_be_read_may_still_be_named()
    {
        var json = Specimen.With(("/tubes/trunk/wall", "\"9 mm\""), ("/nozzles/fan/kFactor", "5"), ("/fittings/panel/bore", "5"), ("/zones/left/share", "7"));

        var faults = Specimen.Read(json).Faults;

        Assert.Equal(["/zones/left/share", "/tubes/trunk/wall", "/nozzles/fan/kFactor", "/fittings/panel/bore"], faults.Select(fault => fault.Pointer));
    }

    [Fact]
    public void A_name_needs_a_character_and_no_control_character()
    {
        Specimen.HasOneFault(Specimen.With(("/tubes/", """{ "bore": "4 mm" }""")), "/tubes/", "1 to 200 characters");
        Specimen.HasOneFault(Specimen.With(("/zones/a\u0007", "{}")), "/zones/a\u0007", "control character");
    }

    [Fact]
    public void Shares_of_nozzles_count_with_those_of_zones()
    {
        Specimen.HasOneFault(Specimen.With(("/points/5/share", "0.51")), "/zones", "add up to 1.01");
        Assert.Empty(Specimen.Read(Specimen.With(("/points/5/share", "0.5"))).Faults);
    }

    [Fact]
    public void Own_shares_within_a_zone_are_part_of_its_share()
    {
        Assert.Empty(Specimen.Read(Specimen.With(("/points/3/share", "0.5"), ("/zones/right/share", "0.5"))).Faults);
        Specimen.HasOneFault(Specimen.With(("/points/3/share", "0.6")), "/zones/left/share", "more than the zone's");
    }

    [Fact]
    public void A_share_of_a_zone_belongs_to_its_nozzles()
    {
        Specimen.HasOneFault(Specimen.With(("/points/3/share", "0.3")), "/zones/left/share", "read 0.5: every nozzle of 'left' has a share of its own, and these add up to 0.3");
        Specimen.HasOneFault(Specimen.With(("/points/5/zone", "\"left\""), ("/points/3/share", "0.3"), ("/points/5/share", "0.1")), "/zones/left/share", "add up to 0.4");
        Assert.Empty(Specimen.Read(Specimen.With(("/points/5/zone", "\"left\""), ("/points/3/share", "0.3"))).Faults);
        Assert.Empty(Specimen.Read(Specimen.With(("/points/5/zone", "\"left\""), ("/points/3/share", "0.3"), ("/points/5/share", "0.2"))).Faults);
    }

    [Fact]
    public void A_nozzle_that_cannot_be_read_may_be_what_the_rest_of_a_share_belongs_to() =>
        Specimen.HasOneFault(Specimen.With(("/points/3/share", "0.3"), ("/points/5/kind", "\"sprinkler\"")), "/points/5/kind", "one of supply");

    // The longest name is counted in code points, as JSON Schema does (draft 2020-12, validation, 6.3.1), not in units of UTF-16.
    [Fact]
    public void Names_are_counted_in_code_points_by_reader_and_schema()
    {
        static string Named(int count) => Specimen.With(("/zones/right", null), ("/points/5/zone", $"\"{Long(count)}\""), ($"/zones/{Long(count)}", "{}"));
        static string Pointed(int count) => Specimen.With(("/points/6/id", $"\"{Long(count)}\""), ("/runs/5/to", $"\"{Long(count)}\""));
        static string Long(int count) => string.Concat(Enumerable.Repeat("\U0001F525", count));

        Assert.Empty(Specimen.Read(Named(200)).Faults);
        Assert.Empty(Specimen.Read(Pointed(200)).Faults);
        Assert.True(BuiltSchema.Accepts(Named(200)));
        Assert.True(BuiltSchema.Accepts(Pointed(200)));
        Assert.All(Specimen.Read(Named(201)).Faults, fault => Assert.Contains("1 to 200 characters", fault.Message, StringComparison.Ordinal));
        Assert.NotEmpty(Specimen.Read(Named(201)).Faults);
        Assert.NotEmpty(Specimen.Read(Pointed(201)).Faults);
        Assert.False(BuiltSchema.Accepts(Pointed(201)));
        Assert.Empty(Specimen.Read(Specimen.With(("/title", $"\"{Long(1_000)}\""))).Faults);
        Specimen.HasOneFault(Specimen.With(("/title", $"\"{Long(1_001)}\"")), "/title", "1001 characters");
    }
}
