using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using FlowCalc.Examples;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class SheetTextTests
{
    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void An_example_written_anew_is_the_same_document_and_reads_without_fault(string name)
    {
        var document = JsonNode.Parse(ExampleCatalogue.Find(name)!.Value.Span)!.AsObject();

        var text = SheetText.Write(document);

        Assert.True(JsonNode.DeepEquals(document, JsonNode.Parse(text)));
        Assert.Empty(Sheet.Of(text, TestContext.Current.CancellationToken).Faults);
        Assert.Equal(text, SheetText.Write(JsonNode.Parse(text)!.AsObject()));
    }

    [Fact]
    public void Any_object_comes_back_as_it_was() => Anything.Sample(node =>
    {
        var root = new JsonObject { ["part"] = node?.DeepClone() };
        return JsonNode.DeepEquals(root, JsonNode.Parse(SheetText.Write(root)));
    }, iter: 500);

    [Fact]
    public void What_fits_into_a_line_stands_in_one_and_no_line_is_longer_than_a_page_is_wide()
    {
        var text = SheetText.Write(JsonNode.Parse(ExampleCatalogue.Find("raid-pickup")!.Value.Span)!.AsObject());

        Assert.Contains("""    { "id": "T-rear", "kind": "tee", "fedThrough": "run", "body": "smooth", "insertion": "12 mm", "centreToStop": "9 mm", "at": ["0.00 m", "0.35 m", "0.25 m"] },""", text, StringComparison.Ordinal);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 220));
    }

    static Gen<JsonNode?> Anything => Gen.Recursive<JsonNode?>((depth, inner) => depth > 3
        ? Leaf
        : Gen.Frequency(
            (2, Leaf),
            (1, inner.Array[0, 5].Select(entries => (JsonNode?)new JsonArray([.. entries.Select(entry => entry?.DeepClone())]))),
            (1, Gen.Select(Word, inner).Array[0, 5].Select(members => (JsonNode?)new JsonObject(members.DistinctBy(member => member.Item1).Select(member => KeyValuePair.Create(member.Item1, member.Item2?.DeepClone())))))));

    static Gen<JsonNode?> Leaf => Gen.OneOf<JsonNode?>(
        Gen.Const((JsonNode?)null), Word.Select(text => (JsonNode?)JsonValue.Create(text)), Gen.Double.Where(double.IsFinite).Select(number => (JsonNode?)JsonValue.Create(number)), Gen.Bool.Select(flag => (JsonNode?)JsonValue.Create(flag)));

    static Gen<string> Word => Gen.String[Gen.Char["abc \"\\/<>é\u2028°\t"], 0, 60];
}
