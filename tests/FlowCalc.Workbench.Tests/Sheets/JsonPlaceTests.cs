using System.Text.Json.Nodes;
using CsCheck;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class JsonPlaceTests
{
    [Fact]
    public void Names_of_a_pointer_are_those_that_it_was_made_of() => Gen.String[Gen.Char["ab/~01 é"], 0, 6].Array[1, 5].Sample(names =>
        JsonPlace.Names(JsonPlace.Of(names)).SequenceEqual(names));

    // The examples of RFC 6901 section 5, from its text; the whole document ("") is no place to set.
    [Theory]
    [InlineData("/foo", """["bar","baz"]""")]
    [InlineData("/foo/0", "\"bar\"")]
    [InlineData("/", "0")]
    [InlineData("/a~1b", "1")]
    [InlineData("/c%d", "2")]
    [InlineData("/e^f", "3")]
    [InlineData("/g|h", "4")]
    [InlineData("/i\\j", "5")]
    [InlineData("/k\"l", "6")]
    [InlineData("/ ", "7")]
    [InlineData("/m~0n", "8")]
    public void Examples_of_the_standard_are_found(string pointer, string value)
    {
        var root = JsonNode.Parse("""{ "foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4, "i\\j": 5, "k\"l": 6, " ": 7, "m~n": 8 }""")!;

        Assert.Equal(value, JsonPlace.Find(root, pointer)!.ToJsonString());
    }

    [Fact]
    public void What_is_set_anywhere_in_an_object_is_found_there_and_taken_away_again() => Gen.String[Gen.Char["ab/~"], 1, 3].Array[1, 4].Sample(names =>
    {
        var (root, pointer) = (new JsonObject { ["stays"] = 1 }, JsonPlace.Of(names));
        var before = root.DeepClone();
        JsonPlace.Set(root, pointer, 7);
        Assert.Equal(7, JsonPlace.Find(root, pointer)!.GetValue<int>());
        JsonPlace.Set(root, pointer, null);
        Assert.Null(JsonPlace.Find(root, pointer));
        // The outermost object that was made on the way stays where it would be the document's own.
        if (names.Length == 1) Assert.True(JsonNode.DeepEquals(before, root));
    });

    [Theory]
    [InlineData("/list/2", """{ "list": [1, 2, 9] }""")]
    [InlineData("/list/0", """{ "list": [9, 2] }""")]
    public void Entry_of_a_list_is_replaced_or_added_at_its_end(string pointer, string after)
    {
        var root = JsonNode.Parse("""{ "list": [1, 2] }""")!.AsObject();

        JsonPlace.Set(root, pointer, 9);

        Assert.True(JsonNode.DeepEquals(JsonNode.Parse(after), root));
    }

    [Theory]
    [InlineData("/list/3")]
    [InlineData("/list/-1")]
    [InlineData("/list/x")]
    [InlineData("/word/part")]
    public void Place_that_is_none_is_refused(string pointer)
    {
        var root = JsonNode.Parse("""{ "list": [1, 2], "word": "text" }""")!.AsObject();

        Assert.Throws<InvalidOperationException>(() => JsonPlace.Set(root, pointer, 9));
        Assert.Null(JsonPlace.Find(root, pointer));
    }
}
