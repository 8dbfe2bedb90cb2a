using System.Collections.Immutable;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Tests.Layouts.Editing;

public class DocumentEditTests
{
    static readonly ReadOnlyMemory<byte> Demo = ExampleCatalogue.Find("raid-pickup")!.Value;

    [Fact]
    public void Run_is_found_by_its_id_wherever_it_stands()
    {
        var layout = Read(Edited(("runs/R11/tube", "\"feed\"")));

        Assert.Equal("feed", layout.Runs.Single(run => run.Id == "R11").Tube.Name);
        Assert.All(layout.Runs.Zip(Read(Demo).Runs).Where(pair => pair.First.Id != "R11"), pair => Assert.Equal(pair.Second.Tube, pair.First.Tube));
    }

    [Fact]
    public void Run_without_an_id_is_found_by_its_ends()
    {
        var document = """{ "runs": [ { "from": "a", "to": "b" }, { "from": "b", "to": "c" } ] }"""u8.ToArray();

        var edited = Apply(document, [Change("runs/b-c/length", "\"2 m\"")]);

        Assert.Empty(edited.Faults);
        Assert.Equal("2 m", JsonNode.Parse(edited.Utf8.Span)!["runs"]![1]!["length"]!.GetValue<string>());
        Assert.Equal("/runs/1/length", edited.Pointers.Single());
    }

    [Fact]
    public void Strokes_and_tildes_within_a_name_are_escaped_as_in_a_pointer()
    {
        var document = """{ "tubes": { "a/b~c": { "bore": "4 mm" } } }"""u8.ToArray();

        var edited = Apply(document, [Change("tubes/a~1b~0c/bore", "\"5 mm\"")]);

        Assert.Equal("5 mm", JsonNode.Parse(edited.Utf8.Span)!["tubes"]!["a/b~c"]!["bore"]!.GetValue<string>());
    }

    [Fact]
    public void Null_takes_a_member_away_and_what_is_not_there_cannot_be_taken()
    {
        var document = """{ "runs": [ { "id": "x", "rise": "1 m" } ], "cases": { "attitudes": [ { "name": "upright" }, { "name": "on the roof" } ] } }"""u8.ToArray();

        var edited = Apply(document, [Change("runs/x/rise", "null"), Change("cases/attitudes/upright", "null"), Change("runs/x/bore", "null")]);

        var root = JsonNode.Parse(edited.Utf8.Span)!;
        Assert.False(root["runs"]![0]!.AsObject().ContainsKey("rise"));
        Assert.Equal("on the roof", root["cases"]!["attitudes"]!.AsArray().Single()!["name"]!.GetValue<string>());
        Assert.Equal([2], edited.Faults.Select(fault => fault.Change));
    }

    [Theory]
    [InlineData("", "empty path")]
    [InlineData("/runs/R11/tube", "without a stroke before")]
    [InlineData("runs//tube", "a name of it is empty")]
    [InlineData("runs/R~2/tube", "tilde")]
    [InlineData("runs/r11/tube", "did you mean 'R11'?")]
    [InlineData("run/R11/tube", "did you mean 'runs'?")]
    [InlineData("title/long", "single value")]
    [InlineData("a/b/c/d/e/f/g/h/i/j/k/l/m/n/o/p/q", "at most 16 names")]
    public void Path_that_names_nothing_says_why(string path, string why)
    {
        var edited = Apply(Demo, [Change(path, "\"x\"")]);

        Assert.Contains(why, Assert.Single(edited.Faults).Message, StringComparison.Ordinal);
        Assert.Null(edited.Pointers.Single());
    }

    [Fact]
    public void Changes_are_made_one_after_the_other()
    {
        var edited = Apply("""{ "tubes": {} }"""u8.ToArray(), [Change("tubes/a", """{ "bore": "4 mm" }"""), Change("tubes/a/bore", "\"5 mm\"")]);

        Assert.Equal("""{"tubes":{"a":{"bore":"5 mm"}}}""", JsonNode.Parse(edited.Utf8.Span)!.ToJsonString());
    }

    [Fact]
    public void Text_that_is_no_object_or_has_a_name_twice_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Apply("[]"u8.ToArray(), []));
        Assert.Throws<ArgumentException>(() => Apply("""{ "a": 1, "a": 2 }"""u8.ToArray(), []));
    }

    // Every member of the demo, set to what it is: nothing changes, and each goes where it stood.
    [Fact]
    public void Setting_what_is_there_changes_nothing()
    {
        var root = JsonNode.Parse(Demo.Span)!;
        var changes = root["runs"]!.AsArray().SelectMany(run => run!.AsObject().Select(member =>
            Change($"runs/{run["id"] ?? $"{run["from"]}-{run["to"]}"}/{member.Key}", member.Value!.ToJsonString()))).ToImmutableArray();

        var edited = Apply(Demo, changes);

        Assert.Empty(edited.Faults);
        Assert.True(JsonNode.DeepEquals(root, JsonNode.Parse(edited.Utf8.Span)));
    }

    // Two changes of different places make the same document in either order.
    [Fact]
    public void Order_of_changes_elsewhere_does_not_matter()
    {
        var paths = new[] { "runs/R11/tube", "runs/R1/note", "title", "supply/note", "tubes/feed/note" };
        Gen.Select(Gen.Int[0, 4], Gen.Int[0, 4]).Where(pair => pair.Item1 != pair.Item2).Sample((one, other) =>
        {
            ImmutableArray<DocumentChange> changes = [Change(paths[one], "\"x\""), Change(paths[other], "\"y\"")];
            Assert.True(JsonNode.DeepEquals(
                JsonNode.Parse(Apply(Demo, changes).Utf8.Span), JsonNode.Parse(Apply(Demo, [changes[1], changes[0]]).Utf8.Span)));
        }, iter: 40);
    }

    [Fact]
    public void Edit_ends_early_where_its_token_is_cancelled() =>
        Assert.Throws<OperationCanceledException>(() => DocumentEdit.Apply(Demo, [Change("title", "\"x\"")], new CancellationToken(canceled: true)));

    static EditedDocument Apply(ReadOnlyMemory<byte> utf8, ImmutableArray<DocumentChange> changes) => DocumentEdit.Apply(utf8, changes, TestContext.Current.CancellationToken);

    static ReadOnlyMemory<byte> Edited(params (string Path, string Json)[] changes)
    {
        var edited = Apply(Demo, [.. changes.Select(change => Change(change.Path, change.Json))]);
        Assert.Empty(edited.Faults);
        return edited.Utf8;
    }

    static Layout Read(ReadOnlyMemory<byte> utf8)
    {
        var reading = LayoutReader.Read(utf8);
        Assert.True(reading.Layout is not null, string.Join('\n', reading.Faults) + Encoding.UTF8.GetString(utf8.Span));
        return reading.Layout;
    }

    static DocumentChange Change(string path, string json)
    {
        using var value = JsonDocument.Parse(json);
        return new DocumentChange(path, value.RootElement.Clone());
    }
}
