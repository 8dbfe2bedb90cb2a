using System.Reflection;
using System.Text;
using System.Text.Json;
using CsCheck;
using FlowCalc.Agents;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Layouts.Reading.Mounts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using Json.Schema;

namespace FlowCalc.Tests.Layouts;

/// <summary>The JSON Schema against the standard's own schema, the examples and the reader.</summary>
public class LayoutSchemaTests
{
    static JsonElement Document => BuiltSchema.Document;

    static bool Accepts(string json) => BuiltSchema.Accepts(json);

    static JsonElement Definition(string name) => name.Length == 0 ? Document : Document.GetProperty("$defs").GetProperty(name);

    static string[] Enum(string definition, string property) =>
        [.. Definition(definition).GetProperty("properties").GetProperty(property).GetProperty("enum").EnumerateArray().Select(value => value.GetString()!)];

    [Fact]
    public void The_schema_is_one_of_draft_2020_12() => Assert.True(MetaSchemas.Draft202012.Evaluate(Document).IsValid);

    [Fact]
    public void Every_example_and_the_specimen_are_valid()
    {
        Assert.All(ExampleCatalogue.All, example => Assert.True(Accepts(Encoding.UTF8.GetString(ExampleCatalogue.Find(example.Name)!.Value.Span)), example.Name));
        Assert.True(Accepts(Specimen.Json));
    }

    [Fact]
    public void Every_generated_document_that_the_reader_accepts_is_valid() =>
        GeneratedLayout.Any.Sample(generated => generated.Read() is not null && Accepts(generated.Json), iter: 300);

    [Fact]
    public void The_schema_has_the_readers_fields_and_no_others() =>
        Assert.All(LayoutFields.All, pair =>
        {
            var definition = Definition(pair.Definition);
            Assert.Equal(pair.Table.Names.Order(StringComparer.Ordinal), definition.GetProperty("properties").EnumerateObject().Select(property => property.Name).Order(StringComparer.Ordinal));
            Assert.False(definition.GetProperty("additionalProperties").GetBoolean());
        });

    [Fact]
    public void Every_definition_of_an_object_belongs_to_a_field_table()
    {
        var objects = Document.GetProperty("$defs").EnumerateObject()
            .Where(definition => definition.Value.TryGetProperty("properties", out _) && definition.Name != "limits").Select(definition => definition.Name);

        Assert.Equal(LayoutFields.All.Select(pair => pair.Definition).Where(name => name.Length > 0).Order(StringComparer.Ordinal), objects.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Words_to_choose_from_are_the_readers()
    {
        Assert.Equal(PointReader.Kinds.Words, Enum("point", "kind"));
        Assert.Equal(PointReader.Ports.Words, Enum("point", "fedThrough"));
        Assert.Equal(PointReader.Ports.Words, Enum("run", "leaves"));
        Assert.Equal(PointReader.Bodies.Words, Enum("point", "body"));
        Assert.Equal(BottleReader.Gases.Words, Enum("bottle", "cushionGas"));
        Assert.Equal(BottleReader.Heats.Words, Enum("bottle", "cushionHeat"));
        Assert.Equal(DocumentReader.Applications.Words, Enum("", "application"));
        Assert.Equal(RequirementReader.Wholes.Words, Enum("requirement", "of"));
        Assert.Equal(ModelReader.NozzleModels.Words, Enum("model", "nozzles"));
        Assert.Equal(MountBoltsReader.SizeNames.Words, Enum("mountBolts", "size"));
        Assert.Equal(MountBoltsReader.ClassNames.Words, Enum("mountBolts", "class"));
        Assert.Equal(MountBoltsReader.Heads.Words, Enum("mountBolts", "head"));
        Assert.Equal(StrapReader.Tightening.Words, Enum("mountStrap", "tightened"));
        Assert.Equal(StrapReader.Ends.Words, Enum("endStop", "end"));
        Assert.Equal(MountMaterialReader.Kinds.Words, Enum("mountMaterial", "kind"));
        foreach (var owner in (string[])["tappedHole", "mountPanel", "mountFoot", "mountAdapter", "mountStrap"])
            Assert.Equal(MountMaterialReader.Names.Words, Definition(owner).GetProperty("properties").GetProperty("material").GetProperty("anyOf")[0].GetProperty("enum").EnumerateArray().Select(value => value.GetString()));
        Assert.Equal(CircuitSourceReader.Kinds.Words, Enum("circuitSource", "kind"));
        Assert.Equal(CircuitPartReader.Kinds.Words, Enum("circuitPart", "kind"));
        Assert.Equal(WireReader.Cables.Words, Enum("circuitPart", "cable"));
        Assert.Equal(ContactReader.Purposes.Words, Enum("circuitPart", "purpose"));
        Assert.Equal(ContactReader.Characteristics.Words, Enum("circuitPart", "characteristic"));
        Assert.Equal(ActuatorReader.Types.Words, Enum("circuitPart", "type"));
        Assert.Equal(ZoneReader.Protections.Words, Enum("zone", "protection"));
        Assert.Equal(ZoneReader.Hazards.Words, Enum("zone", "hazard"));
        Assert.Equal(ServiceReader.Bases.Words, Enum("serviceRule", "basis"));
        Assert.Equal(MeasuredReader.Suspects.Words, Definition("measured").GetProperty("properties").GetProperty("suspects").GetProperty("items").GetProperty("enum").EnumerateArray().Select(value => value.GetString()));
        Assert.Equal(AgentCatalogue.Mixtures.Select(mixture => mixture.Id), Enum("agentDescription", "mixture"));
        Assert.Equal(AgentCatalogue.Ids, Definition("agent").GetProperty("anyOf")[0].GetProperty("enum").EnumerateArray().Select(value => value.GetString()));
        Assert.Equal(DefaultLimits.All.Select(limit => limit.Code), Definition("limits").GetProperty("properties").EnumerateObject().Select(property => property.Name));
    }

    [Fact]
    public void The_schema_states_every_range_that_the_reader_keeps()
    {
        var text = Encoding.UTF8.GetString(LayoutSchema.Utf8.Span);
        var ranges = typeof(Sizes).GetFields(BindingFlags.Static | BindingFlags.Public).Select(field => field.GetValue(null)).OfType<SizeRange>().ToArray();

        Assert.True(ranges.Length > 30);
        Assert.All(ranges, range => Assert.Contains(range.Words, text, StringComparison.Ordinal));
    }

    public static TheoryData<string, QuantityKind> Kinds => new()
    {
        { "length", QuantityKind.Length }, { "volume", QuantityKind.Volume }, { "pressure", QuantityKind.Pressure }, { "mass", QuantityKind.Mass }, { "density", QuantityKind.Density },
        { "kFactor", QuantityKind.KFactor }, { "flowCoefficient", QuantityKind.FlowCoefficient }, { "viscosity", QuantityKind.Viscosity }, { "temperature", QuantityKind.Temperature },
        { "time", QuantityKind.Time }, { "angle", QuantityKind.Angle }, { "speed", QuantityKind.Speed }, { "force", QuantityKind.Force }, { "stress", QuantityKind.Stress },
        { "area", QuantityKind.Area }, { "current", QuantityKind.Current }, { "voltage", QuantityKind.Voltage }, { "resistance", QuantityKind.Resistance },
        { "capacitance", QuantityKind.Capacitance }, { "energy", QuantityKind.Energy }, { "massFlow", QuantityKind.MassFlow }, { "volumeFlow", QuantityKind.VolumeFlow },
    };

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_quantity_of_the_schema_takes_the_readers_units_and_no_others(string definition, QuantityKind kind)
    {
        var schema = BuiltSchema.Definition(definition);
        bool Takes(string json) => schema.Evaluate(JsonDocument.Parse(json).RootElement).IsValid;

        foreach (var spelling in UnitTable.All.SelectMany(entry => entry.Twins.Prepend(entry.Symbol)).Distinct())
        {
            var isRead = QuantityReader.TryRead($"300 {spelling}", kind, out _, out _);
            Assert.True(isRead == Takes($"\"300 {spelling}\""), spelling);
            Assert.True(isRead == Takes($"\"300{spelling}\""), spelling);
            Assert.True(isRead == Takes($$"""{ "value": 300, "unit": "{{spelling}}" }"""), spelling);
        }
        Assert.False(Takes("300"));
        Assert.False(Takes("\"300\""));
    }

    [Theory]
    [InlineData("1/4 in", true)]
    [InlineData("1 1/2 in", true)]
    [InlineData("1/4 mm", false)]
    [InlineData(".5 mm", true)]
    [InlineData("5. mm", false)]
    [InlineData("1,5 mm", false)]
    [InlineData("1.5e-3 m", true)]
    [InlineData("\u00A01.5\u202Fmm\u2009", true)]
    [InlineData("1 500 mm", false)]
    public void Numbers_in_a_text_are_the_readers(string text, bool isSound)
    {
        var json = Specimen.With(("/runs/2/lossCoefficient", "0"), ("/tubes/thin/bore", JsonSerializer.Serialize(text)));

        Assert.Equal(isSound, Specimen.Read(json).Faults.All(fault => fault.Pointer != "/tubes/thin/bore"));
        Assert.Equal(isSound, Accepts(json));
    }
}
