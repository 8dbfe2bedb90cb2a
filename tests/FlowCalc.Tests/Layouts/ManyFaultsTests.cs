using System.Text;
using System.Text.Json;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>Many faults at once, and text made to hurt.</summary>
public class ManyFaultsTests
{
    [Fact]
    public void Every_fault_is_told_at_once_in_the_documents_order()
    {
        var json = Specimen.With(
            ("/runs/3/length", "\"far\""), ("/format", "3"), ("/points/3/nozzle", "\"fun\""), ("/supply/bottle/volume", "4"), ("/agent", "\"water~/\""), ("/zones/left/share", "2"),
            ("/runs/0/tubing", "1"), ("/points/1/kind", "\"tea\""));

        var reading = Specimen.Read(json);

        Assert.Null(reading.Layout);
        Assert.Equal(
            ["/format", "/agent", "/supply/bottle/volume", "/zones/left/share", "/points/1/kind", "/points/3/nozzle", "/runs/0/tubing", "/runs/3/length"],
            reading.Faults.Select(fault => fault.Pointer));
    }

    [Fact]
    public void Pointers_escape_strokes_and_tildes() =>
        Specimen.HasOneFault(
            Specimen.Json.Replace("\"panel\": {", "\"a/b~c\": { \"kind\": 5 }, \"panel\": {", StringComparison.Ordinal), "/fittings/a~1b~0c/kind", "is text");

    [Theory]
    [InlineData("""{ "format": 1, "format": 1 }""", "/format")]
    [InlineData("""{ "format": 1, "form\u0061t": 1 }""", "/format")]
    [InlineData("""{ "zones": { "a": {}, "a": {} } }""", "/zones/a")]
    [InlineData("""{ "zones": { "a": { "share": 0.1, "share": 0.1 } } }""", "/zones/a/share")]
    [InlineData("""{ "tubes": { "a": { "bore": "1 mm" }, "\u0061": { "bore": "1 mm" } } }""", "/tubes/a")]
    [InlineData("""{ "supply": { "pressure": { "value": 1, "value": 2, "unit": "bar" } } }""", "/supply/pressure/value")]
    [InlineData("""{ "nozzles": { "a": { "kFactor": "1 L/min/bar^0.5", "spray": { "angle": "60°", "angle": "60°" } } } }""", "/nozzles/a/spray/angle")]
    public void A_repeated_key_is_a_fault_at_any_depth(string json, string pointer) =>
        Assert.Contains(Specimen.Read(json).Faults, fault => fault.Pointer == pointer && fault.Message.StartsWith("repeated", StringComparison.Ordinal));

    [Fact]
    public void Faults_beyond_the_most_are_counted()
    {
        var json = Specimen.With(("/agent", "\"x\""), ("/zones", "{" + string.Join(',', Enumerable.Range(0, 50).Select(i => $"\"z{i}\": 1")) + "}"));

        var faults = Specimen.Read(json, new LayoutReaderOptions { MaximumFaults = 10 }).Faults;

        // 50 zones, the agent, and two nozzles that name zones which are gone.
        Assert.Equal(11, faults.Length);
        Assert.Equal(new LayoutFault("", "43 more faults are not listed; the first 10 found are"), faults[^1]);
    }

    [Fact]
    public void A_million_unknown_fields_are_counted_quickly()
    {
        var json = new StringBuilder("{ \"format\": 1");
        for (var i = 0; i < 1_000_000; i++) json.Append(",\"f").Append(i).Append("\":0");
        json.Append('}');

        var faults = Specimen.Read(json.ToString()).Faults;

        Assert.Equal(1_001, faults.Length);
        Assert.StartsWith("999004 more faults", faults[^1].Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("{ format: 1 }")]
    [InlineData("""{ "format": 1, }""")]
    [InlineData("""{ "format": 1 } // comment""")]
    [InlineData("""{ "format": 1 } { }""")]
    [InlineData("""{ "format": NaN }""")]
    [InlineData("""{ "format": 01 }""")]
    public void Text_that_is_not_json_is_refused(string text) => Assert.ThrowsAny<JsonException>(() => Specimen.Read(text));

    [Fact]
    public void Text_that_is_not_utf8_is_refused() =>
        Assert.ThrowsAny<JsonException>(() => LayoutReader.Read(new byte[] { (byte)'{', (byte)'"', 0xFF, (byte)'"', (byte)':', (byte)'1', (byte)'}' }, null, TestContext.Current.CancellationToken));

    [Fact]
    public void A_byte_order_mark_is_no_fault_and_does_not_shift_pointers()
    {
        byte[] sound = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Specimen.Json)];
        byte[] wrong = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(Specimen.With(("/runs/2/length", "\"x\"")))];

        Assert.Empty(LayoutReader.Read(sound, null, TestContext.Current.CancellationToken).Faults);
        Assert.Equal("/runs/2/length", Assert.Single(LayoutReader.Read(wrong, null, TestContext.Current.CancellationToken).Faults).Pointer);
    }

    [Theory]
    [InlineData(65)]
    [InlineData(100_000)]
    public void Nesting_beyond_the_most_is_refused(int depth)
    {
        var json = $$"""{ "format": {{new string('[', depth)}}{{new string(']', depth)}} }""";

        Assert.ThrowsAny<JsonException>(() => Specimen.Read(json));
    }

    [Fact]
    public void Nesting_up_to_the_most_is_a_fault_like_any_other()
    {
        var json = Specimen.With(("/title", new string('[', 60) + new string(']', 60)));

        Specimen.HasOneFault(json, "/title", "read an array");
    }

    [Theory]
    [InlineData("[]")]
    [InlineData("null")]
    [InlineData("1")]
    [InlineData("\"layout\"")]
    public void A_document_that_is_no_object_is_one_fault_of_the_whole(string json) => Specimen.HasOneFault(json, "", "a layout is an object");

    [Fact]
    public void Half_a_surrogate_pair_is_a_fault_and_not_a_failure()
    {
        Specimen.HasOneFault(Specimen.Json.Replace("\"Specimen\"", "\"\\uD800\"", StringComparison.Ordinal), "/title", "surrogate");
        var inAName = Specimen.Read(Specimen.Json.Replace("\"zones\": {", "\"zones\": { \"\\uDC00\": {},", StringComparison.Ordinal));
        Assert.Contains("surrogate", Assert.Single(inAName.Faults).Message, StringComparison.Ordinal);
        var inAField = Specimen.Read(Specimen.Json.Replace("\"format\": 1", "\"format\": 1, \"\\uD800\": 2", StringComparison.Ordinal));
        Assert.Contains("unknown field", Assert.Single(inAField.Faults).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_message_echoes_at_most_80_characters_and_nothing_that_acts()
    {
        var json = Specimen.With(("/agent", JsonSerializer.Serialize("\u202E\u001B[31m" + new string('w', 150))));

        var fault = Assert.Single(Specimen.Read(json).Faults);

        Assert.DoesNotContain('\u202E', fault.Message);
        Assert.DoesNotContain('\u001B', fault.Message);
        Assert.DoesNotContain(new string('w', 81), fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Reading_ends_when_it_is_cancelled() =>
        Assert.ThrowsAny<OperationCanceledException>(() => LayoutReader.Read(Encoding.UTF8.GetBytes(Specimen.Json), null, new CancellationToken(canceled: true)));

    [Fact]
    public void Options_outside_their_range_are_refused()
    {
        foreach (var options in new LayoutReaderOptions[] { new() { MaximumPoints = 0 }, new() { MaximumFaults = 0 }, new() { MaximumDepth = 0 }, new() { MaximumDepth = 1_001 } })
            Assert.Throws<ArgumentOutOfRangeException>(() => Specimen.Read(Specimen.Json, options));
    }
}
