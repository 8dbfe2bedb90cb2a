using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>What the document says of the mount.</summary>
public class MountFaultTests
{
    const string Whole = """
        { "note": "rear", "normal": [-1, 0, 0], "x": [0, 0, 2], "bottleAt": ["1 mm", "2 mm", "85 mm"], "fullMass": "7.5 kg",
          "masses": [{ "name": "bracket", "mass": "0.9 kg", "at": ["0 mm", "0 mm", "25 mm"], "note": "welded" }],
          "bolts": { "size": "M6", "class": "8.8", "at": [["-80 mm", "-45 mm"], ["80 mm", "-45 mm"], ["80 mm", "45 mm"], ["-80 mm", "45 mm"]], "head": "countersunk", "washer": "18 mm", "edge": "20 mm", "preload": "6 kN",
            "thread": { "engagement": "12 mm", "material": "aluminium-6082-T6", "note": "insert" }, "note": "new" },
          "panel": { "thickness": "1.5 mm", "material": { "kind": "steel", "tensileStrength": "400 MPa", "yieldStrength": "250 N/mm2", "note": "mark" }, "span": "160 mm", "note": "bulkhead" },
          "foot": { "thickness": "4 mm", "material": "steel-S235", "width": "40 mm", "toBend": "14 mm", "toEdge": "12 mm", "note": "bent" },
          "spacers": "5 mm",
          "adapter": { "thickness": "8 mm", "material": "aluminium-6082-T6", "bolts": { "size": "M8", "rectangle": ["160 mm", "90 mm"] }, "note": "plate" },
          "straps": [{ "at": "-90 mm", "width": "25 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "600 N", "wrap": "180°", "tightened": "both-ends", "note": "left" },
                     { "at": "90 mm", "width": "25 mm", "thickness": "0.8 mm", "material": "webbing" }],
          "friction": 0.25, "cradle": "100°", "endStops": [{ "end": "base" }, { "end": "outlet", "capacity": "5 kN", "note": "lip" }], "insideStructure": true,
          "loads": [{ "name": "crash", "acceleration": 40, "direction": [1, 0, 0], "note": "forward" }, { "name": "any", "acceleration": 25 }] }
        """;

    /// <summary>A mount without fault.</summary>
    public const string Sound = """{ "normal": [-1, 0, 0], "centreOfMass": ["0 mm", "0 mm", "80 mm"], "fullMass": "7 kg", "bolts": { "size": "M6", "rectangle": ["160 mm", "90 mm"] } }""";

    [Theory]
    [InlineData("/mount", "[]", "/mount", "is an object with")]
    [InlineData("/mount/normal", null, "/mount/normal", "missing: three bare numbers")]
    [InlineData("/mount/normal", "[0, 0, 0]", "/mount/normal", "a direction of no length")]
    [InlineData("/mount/x", "[1, 0, 0]", "/mount/x", "a direction along normal")]
    [InlineData("/mount/bottleAt", """["0 mm", "0 mm", "80 mm"]""", "/mount", "both bottleAt and centreOfMass")]
    [InlineData("/mount/centreOfMass", null, "/mount", "neither bottleAt nor centreOfMass")]
    [InlineData("/mount/centreOfMass/2", "\"-1 mm\"", "/mount/centreOfMass/2", "z counts from the face")]
    [InlineData("/mount/fullMass", null, "/mount/fullMass", "missing: the mass of the full bottle")]
    [InlineData("/mount/fullMass", "\"2 kg\"", "/mount/fullMass", "no lighter than its fill")]
    [InlineData("/mount/fullMass", "7", "/mount/fullMass", "a bare number")]
    [InlineData("/mount/hook", "1", "/mount/hook", "unknown field 'hook' of a mount")]
    [InlineData("/mount/bolts", null, "/mount/bolts", "missing: the bolts into the structure")]
    [InlineData("/mount/bolts/size", "\"M7\"", "/mount/bolts/size", "one of M4, M5, M6, M8, M10, M12")]
    [InlineData("/mount/bolts/size", null, "/mount/bolts/size", "missing")]
    [InlineData("/mount/bolts/class", "\"8,8\"", "/mount/bolts/class", "8.8, A4-80, 9.8")]
    [InlineData("/mount/bolts/at", """[["0 mm", "0 mm"]]""", "/mount/bolts", "both at and rectangle")]
    [InlineData("/mount/bolts/rectangle", null, "/mount/bolts", "neither at nor rectangle")]
    [InlineData("/mount/bolts/rectangle", """["160 mm"]""", "/mount/bolts/rectangle", "two lengths, the sides")]
    [InlineData("/mount/bolts/rectangle", """["160 mm", "0 mm"]""", "/mount/bolts/rectangle/1", "over 0 to 10 m")]
    [InlineData("/mount/bolts", """{ "size": "M6", "at": [] }""", "/mount/bolts/at", "1 to 64 pairs")]
    [InlineData("/mount/bolts", """{ "size": "M6", "at": [["0 mm", "0 mm"], ["50 mm", "0 mm"], ["0 mm", "0 mm"]] }""", "/mount/bolts/at/2", "two bolts cannot be at one place")]
    [InlineData("/mount/bolts", """{ "size": "M6", "at": [["0 mm", "0 mm"], ["50 mm", "0 mm"], ["0 mm", "5 mm"]] }""", "/mount/bolts/at/2", "less than their diameter")]
    [InlineData("/mount/bolts", """{ "size": "M6", "at": [["0 mm", "0 mm", "0 mm"]] }""", "/mount/bolts/at/0", "two lengths [x, y]")]
    [InlineData("/mount/bolts/head", "\"round\"", "/mount/bolts/head", "hexagon, countersunk")]
    [InlineData("/mount/bolts/washer", "\"6 mm\"", "/mount/bolts/washer", "wider than its hole")]
    [InlineData("/mount/bolts/edge", "\"3 mm\"", "/mount/bolts/edge", "the hole of M6 itself reaches")]
    [InlineData("/mount/bolts/preload", "\"-1 N\"", "/mount/bolts/preload", "0 to 1000 kN")]
    [InlineData("/mount/bolts", """{ "size": "M6", "class": "8.8", "rectangle": ["160 mm", "90 mm"], "preload": "12 kN" }""", "/mount/bolts/preload", "over the proof load of M6 8.8")]
    [InlineData("/mount/bolts/thread", """{ "material": "steel-S235" }""", "/mount/bolts/thread/engagement", "missing")]
    [InlineData("/mount/bolts/thread", """{ "engagement": "8 mm" }""", "/mount/bolts/thread/material", "missing: a material")]
    [InlineData("/mount/panel", """{ "material": "steel-S235" }""", "/mount/panel/thickness", "missing")]
    [InlineData("/mount/panel", """{ "thickness": "1 mm", "material": "wood" }""", "/mount/panel/material", "steel-sheet, steel-S235")]
    [InlineData("/mount/panel", """{ "thickness": "1 mm", "material": { "kind": "steel", "tensileStrength": "300 MPa", "yieldStrength": "400 MPa" } }""", "/mount/panel/material/yieldStrength", "yields before it breaks")]
    [InlineData("/mount/panel", """{ "thickness": "1 mm", "material": 270 }""", "/mount/panel/material", "a material: one of")]
    [InlineData("/mount/panel", """{ "thickness": "1 mm", "material": "steel-sheet", "span": "8 mm" }""", "/mount/panel/span", "what bears on the sheet is as wide")]
    [InlineData("/mount/panel", """{ "thickness": "1 mm", "material": "steel-sheet", "spreader": { "width": "5 mm", "thickness": "3 mm" } }""", "/mount/panel/spreader/width", "wider than its hole")]
    [InlineData("/mount/foot", """{ "thickness": "4 mm", "material": "steel-S235", "width": "40 mm", "toBend": "14 mm" }""", "/mount/foot/toEdge", "missing")]
    [InlineData("/mount/spacers", "\"2 m\"", "/mount/spacers", "0 to 1 m")]
    [InlineData("/mount/adapter", """{ "thickness": "8 mm", "material": "steel-S235" }""", "/mount/adapter/bolts", "missing")]
    [InlineData("/mount/straps", "{}", "/mount/straps", "an array of at most 20 objects")]
    [InlineData("/mount/straps", """[{ "at": "0 mm", "width": "20 mm", "thickness": "1 mm" }]""", "/mount/straps/0/material", "missing")]
    [InlineData("/mount/straps", """[{ "at": "0 mm", "width": "20 mm", "thickness": "1 mm", "material": "webbing", "wrap": "5°" }]""", "/mount/straps/0/wrap", "10 to 350°")]
    [InlineData("/mount/straps", """[{ "at": "0 mm", "width": "20 mm", "thickness": "1 mm", "material": "webbing" }, { "at": "15 mm", "width": "20 mm", "thickness": "1 mm", "material": "webbing" }]""", "/mount/straps/1", "would lie on it")]
    [InlineData("/mount/endStops", """[{ "end": "base" }, { "end": "base" }]""", "/mount/endStops/1", "has a stop already")]
    [InlineData("/mount/endStops", """[{ "capacity": "5 kN" }]""", "/mount/endStops/0/end", "missing")]
    [InlineData("/mount/friction", "\"0.2\"", "/mount/friction", "a bare number, 0 to 2")]
    [InlineData("/mount/cradle", "\"200°\"", "/mount/cradle", "10 to 180°")]
    [InlineData("/mount/insideStructure", "\"yes\"", "/mount/insideStructure", "true or false")]
    [InlineData("/mount/masses", """[{ "name": "a", "mass": "1 kg", "at": ["0 m", "0 m", "0 m"] }, { "name": "a", "mass": "1 kg", "at": ["0 m", "0 m", "0 m"] }]""", "/mount/masses/1/name", "another entry has that name already")]
    [InlineData("/mount/masses", """[{ "name": "a", "at": ["0 m", "0 m", "0 m"] }]""", "/mount/masses/0/mass", "missing")]
    [InlineData("/mount/loads", "[]", "/mount/loads", "one load case or more")]
    [InlineData("/mount/loads", """[{ "name": "any", "acceleration": 0 }]""", "/mount/loads/0/acceleration", "over 0 to 1000")]
    [InlineData("/mount/loads", """[{ "name": "any", "acceleration": "25 g" }]""", "/mount/loads/0/acceleration", "a bare number")]
    public void A_wrong_figure_of_the_mount_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With(("/mount", Sound), (edit, value)), pointer, words);

    [Fact]
    public void Straps_of_a_bottle_that_stands_on_the_face_are_a_fault() =>
        Specimen.HasOneFault(
            Specimen.With(("/mount", Sound), ("/mount/normal", "[0, 0, 1]"), ("/mount/straps", """[{ "at": "0 mm", "width": "20 mm", "thickness": "1 mm", "material": "webbing" }]""")),
            "/mount/straps", "leaves the mount's face by 90°");

    [Fact]
    public void Mount_of_a_supply_without_a_bottle_is_a_fault() =>
        Specimen.HasOneFault(Specimen.With(("/mount", Sound), ("/supply", """{ "pressure": "12 bar" }""")), "/mount", "a mount without a bottle");

    [Fact]
    public void Contradictions_are_told_all_at_once()
    {
        var reading = Specimen.Read(Specimen.With(
            ("/mount", Sound), ("/mount/x", "[2, 0, 0]"), ("/mount/bottleAt", """["0 mm", "0 mm", "-1 mm"]"""), ("/mount/fullMass", "\"1 kg\""), ("/mount/bolts", """{ "size": "M6", "at": [["0 mm", "0 mm"], ["0 mm", "0 mm"]], "washer": "2 mm" }"""),
            ("/mount/endStops", """[{ "end": "outlet" }, { "end": "outlet" }]"""), ("/mount/loads", "[]")));

        Assert.Equal(
            ["/mount", "/mount/bolts/at/1", "/mount/bolts/washer", "/mount/bottleAt/2", "/mount/endStops/1", "/mount/fullMass", "/mount/loads", "/mount/x"],
            reading.Faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_figure_of_the_mount_is_read_and_fits_the_schema()
    {
        var json = Specimen.With(("/mount", Whole));

        var mount = Specimen.Read(json).Layout!.Mount!;

        Assert.True(BuiltSchema.Accepts(json));
        Assert.Equal((new Direction(-1, 0, 0), new Direction(0, 0, 2)), (mount.Normal, mount.X));
        Assert.Equal((0.001, 0.002, 0.085), (mount.BottleAt!.Value.X.Meters, mount.BottleAt.Value.Y.Meters, mount.BottleAt.Value.Z.Meters));
        Assert.Equal(("bracket", 0.9), (mount.Masses[0].Name, mount.Masses[0].Mass.Kilograms));
        var bolts = mount.Bolts;
        Assert.Equal(("M6", "8.8", 4, true, 18, 20, 6_000), (bolts.Size.Id, bolts.Class!.Id, bolts.At.Length, bolts.IsCountersunk, bolts.Washer!.Value.Millimeters, bolts.Edge!.Value.Millimeters, bolts.Preload!.Value.Newtons));
        Assert.Equal((12, "aluminium-6082-T6"), (bolts.Thread!.Engagement.Millimeters, bolts.Thread.Material.Id));
        Assert.Equal((1.5, 400, 250), (mount.Panel!.Thickness.Millimeters, mount.Panel.Material.Tensile!.Value.Megapascals, mount.Panel.Material.Yield!.Value.Megapascals));
        Assert.Equal((4, 40, 14, 12), (mount.Foot!.Thickness.Millimeters, mount.Foot.Width.Millimeters, mount.Foot.ToBend.Millimeters, mount.Foot.ToEdge.Millimeters));
        Assert.Equal((5, 8, "M8"), (mount.Spacers!.Value.Millimeters, mount.Adapter!.Thickness.Millimeters, mount.Adapter.Bolts.Size.Id));
        Assert.Null(mount.Adapter.Bolts.Class);
        Assert.Equal((-90, 600, true, false), (mount.Straps!.Value[0].At.Millimeters, mount.Straps.Value[0].Pretension!.Value.Newtons, mount.Straps.Value[0].IsTightenedBothEnds, mount.Straps.Value[1].IsTightenedBothEnds));
        Assert.False(mount.Straps.Value[1].Material.IsMetal);
        Assert.Equal((0.25, true), (mount.Friction, mount.IsInsideStructure));
        Assert.Equal(100, mount.Cradle!.Value.Degrees, tolerance: 1e-9);
        Assert.Equal([(false, null), (true, 5_000.0)], mount.EndStops!.Value.Select(stop => (stop.IsAtOutlet, stop.Capacity?.Newtons)));
        Assert.Equal([("crash", 40, true), ("any", 25, false)], mount.Loads.Select(load => (load.Name, load.Acceleration, load.Direction is not null)));
    }

    [Fact]
    public void Document_that_says_nothing_of_the_mount_has_none_and_is_a_fault_only_where_one_is_asked_for()
    {
        Assert.Null(Specimen.Read(Specimen.Json).Layout!.Mount);

        var fault = Assert.Single(Specimen.Read(Specimen.Json, new LayoutReaderOptions { NeedsMount = true }).Faults);
        Assert.Equal("/mount", fault.Pointer);
        Assert.Contains("how the bottle is held", fault.Message, StringComparison.Ordinal);
    }
}
