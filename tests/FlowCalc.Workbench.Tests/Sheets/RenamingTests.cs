using System.Text.Json.Nodes;
using FlowCalc.Workbench.Sheets;
using FlowCalc.Workbench.Sheets.Changes;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class RenamingTests
{
    const string Fresh = "a/new~name \"quoted\"";

    [Fact]
    public void Runs_follow_a_point_to_its_new_name_and_back_gives_the_same_document() => Documents.All(sheet =>
    {
        for (var point = 0; point < sheet.Layout!.Points.Length; point++)
        {
            var at = point;
            var old = sheet.Layout.Points[at].Id;

            var renamed = Documents.Changed(sheet, root => Renaming.Point(root, at, Fresh));

            Assert.Equal(Fresh, renamed.Layout!.Points[at].Id);
            Assert.Equal(sheet.Layout.Runs.Select(run => (run.From, run.To)), renamed.Layout.Runs.Select(run => (run.From, run.To)));
            Assert.True(JsonNode.DeepEquals(JsonNode.Parse(sheet.Text), JsonNode.Parse(renamed.With(root => Renaming.Point(root, at, old)).Text)));
        }
    });

    [Theory]
    [InlineData("tubes")]
    [InlineData("nozzles")]
    [InlineData("zones")]
    public void Users_of_stock_follow_it_to_its_new_name_in_its_old_place(string kind) => Documents.All(sheet =>
    {
        var names = sheet.NamesAt("/" + kind);
        for (var at = 0; at < names.Count; at++)
        {
            var old = names[at];

            var renamed = Documents.Changed(sheet, root => Renaming.Entry(root, kind, old, Fresh, out _));

            Assert.Equal(Fresh, renamed.NamesAt("/" + kind)[at]);
            Assert.True(JsonNode.DeepEquals(JsonNode.Parse(sheet.Text), JsonNode.Parse(renamed.With(root => Renaming.Entry(root, kind, Fresh, old, out _)).Text)));
        }
    });

    [Fact]
    public void Name_that_two_points_have_takes_no_runs_along()
    {
        var root = JsonNode.Parse(Documents.Example("cabinet-inert-gas"))!.AsObject();
        root["points"]![4]!["id"] = "first";
        var runs = root["runs"]!.DeepClone();

        Renaming.Point(root, 4, "second");

        Assert.True(JsonNode.DeepEquals(runs, root["runs"]));
        Assert.Empty(Sheet.Of(root.ToJsonString(), TestContext.Current.CancellationToken).Faults);
    }

    [Theory]
    [InlineData("drop", "\"drop\" already")]
    [InlineData("", "at least one letter")]
    public void Taken_or_empty_name_of_stock_is_told_and_changes_nothing(string name, string told)
    {
        var root = JsonNode.Parse(Documents.Example("cabinet-inert-gas"))!.AsObject();
        var before = root.DeepClone();

        Renaming.Entry(root, "tubes", "main", name, out var why);

        Assert.Contains(told, why, StringComparison.Ordinal);
        Assert.True(JsonNode.DeepEquals(before, root));
    }
}
