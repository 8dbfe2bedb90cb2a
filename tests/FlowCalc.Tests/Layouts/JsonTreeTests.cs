using System.Runtime.InteropServices;
using System.Text;
using System.Text.Json;
using CsCheck;
using FlowCalc.Examples;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Tests.Layouts;

/// <summary>Held to the framework's own document, value by value.</summary>
public sealed class JsonTreeTests
{
    static readonly Gen<string> Scalar = Gen.OneOf(new[] { "0", "-1.5e3", "1e400", "0.1234567890123456789", "true", "false", "null", "\"\"", "\"µ \\\" \\u00e9\"", "\"12 bar\"" }.Select(Gen.Const).ToArray());

    static readonly Gen<string> Any = Gen.Recursive<string>((depth, inner) => depth > 4
        ? Scalar
        : Gen.OneOf(Scalar, inner.Array[0, 5].Select(parts => $"[{string.Join(" ,", parts)}]"), inner.Array[0, 5].Select(Object)));

    [Fact]
    public void Every_value_is_the_framework_s() => Any.Sample(text => Same(text), iter: 20_000);

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("{\"a\":1,}")]
    [InlineData("[1] 2")]
    [InlineData("[[[[1]]]]")]
    [InlineData("{\"a\"")]
    public void Text_that_the_framework_refuses_is_refused_in_its_words(string text)
    {
        var utf8 = Encoding.UTF8.GetBytes(text);

        var own = Assert.ThrowsAny<JsonException>(() => JsonTree.Parse(utf8, depth: 3));

        Assert.Equal(Assert.ThrowsAny<JsonException>(() => JsonDocument.Parse(utf8, new JsonDocumentOptions { MaxDepth = 3 })).Message, own.Message);
    }

    [Fact]
    public void Examples_are_read_as_the_framework_reads_them() =>
        Assert.All(ExampleCatalogue.All, example => Same(Encoding.UTF8.GetString(ExampleCatalogue.Find(example.Name)!.Value.Span)));

    static string Object(string[] values) => $"{{{string.Join(", ", values.Select((value, i) => $"\"n\\t{i % 3}\" : {value}"))}}}";

    static void Same(string text)
    {
        var utf8 = Encoding.UTF8.GetBytes(text);
        using var framework = JsonDocument.Parse(utf8);
        using var own = JsonTree.Parse(utf8, depth: 64);
        Same(utf8, framework.RootElement, own.Root);
    }

    static void Same(byte[] utf8, JsonElement expected, JsonValue actual)
    {
        Assert.Equal(expected.ValueKind, actual.ValueKind);
        var raw = JsonMarshal.GetRawUtf8Value(expected);
        utf8.AsSpan().Overlaps(raw, out var start);
        Assert.Equal(start, actual.Start);
        if (expected.ValueKind is JsonValueKind.Object) SameMembers(utf8, expected, actual);
        else if (expected.ValueKind is JsonValueKind.Array)
        {
            Assert.Equal(expected.GetArrayLength(), actual.GetArrayLength());
            var i = 0;
            foreach (var entry in actual.EnumerateArray()) Same(utf8, expected[i++], entry);
            Assert.Equal(expected.GetArrayLength(), i);
            if (i > 0) Same(utf8, expected[i - 1], actual[i - 1]);
        }
        else Assert.Equal(raw.ToArray(), actual.Raw.ToArray());
        if (expected.ValueKind is JsonValueKind.Number && expected.TryGetDouble(out var number))
            Assert.Equal(number, actual.TryGetDouble(out var read) ? read : double.NaN);
    }

    static void SameMembers(byte[] utf8, JsonElement expected, JsonValue actual)
    {
        var members = expected.EnumerateObject().ToArray();
        var i = 0;
        foreach (var member in actual.EnumerateObject())
        {
            Assert.Equal(JsonMarshal.GetRawUtf8PropertyName(members[i]).ToArray(), member.RawName.ToArray());
            Same(utf8, members[i++].Value, member.Value);
        }
        Assert.Equal(members.Length, i);
        if (i == 0) return;
        Assert.True(actual.TryGetProperty(members[0].Name, out var found));
        Same(utf8, expected.GetProperty(members[0].Name), found);
    }
}
