using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Sheets.Changes;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class SlidingTests
{
    [Theory]
    [InlineData(0.05)]
    [InlineData(-0.05)]
    [InlineData(0.0123)]
    public void Tee_moved_along_its_line_keeps_the_length_of_all_tube_and_all_other_parts(double by) => Documents.All(sheet =>
    {
        var layout = sheet.Layout!;
        for (var point = 0; point < layout.Points.Length; point++)
        {
            if (layout.Points[point] is not Tee || Sliding.Line(layout, point) is not var (feeding, leaving)) continue;
            string? why = null;
            var changed = sheet.With(root => Sliding.Along(root, layout, (feeding, leaving), by, out why));
            if (why is not null)
            {
                Assert.True(JsonNode.DeepEquals(JsonNode.Parse(sheet.Text), JsonNode.Parse(changed.Text)));
                continue;
            }
            var after = Documents.Sound(changed.Text).Layout!;

            Assert.Equal(layout.Runs[feeding].Length.Meters + by, after.Runs[feeding].Length.Meters, Documents.Rounding);
            Assert.Equal(Documents.Length(layout), Documents.Length(after), Documents.Rounding);
            Assert.True(JsonNode.DeepEquals(
                Documents.Without(sheet, layout.Runs[feeding].Id, layout.Runs[leaving].Id),
                Documents.Without(changed, layout.Runs[feeding].Id, layout.Runs[leaving].Id)));
        }
    });

    [Fact]
    public void Slide_longer_than_the_straight_tube_is_told_with_the_run_that_is_too_short()
    {
        var sheet = Documents.Sound(Documents.Example("cabinet-inert-gas"));
        string? why = null;

        sheet.With(root => Sliding.Along(root, sheet.Layout!, Sliding.Line(sheet.Layout!, 1)!.Value, 5, out why));

        Assert.Contains("T1-T2 is too short", why, StringComparison.Ordinal);
    }

    [Fact]
    public void Placed_point_moves_by_what_was_asked_and_nothing_else_moves()
    {
        var sheet = Documents.Sound(Documents.Example("raid-pickup"));
        var point = Array.FindIndex([.. sheet.Layout!.Points], other => other.Id == "turbo");

        var moved = Documents.Changed(sheet, root => Sliding.Move(root, sheet.Layout, point, 0.05, -0.1, 0.2));

        var (before, after) = (sheet.Layout.Points[point].At!.Value, moved.Layout!.Points[point].At!.Value);
        Assert.Equal(0.05, (after.X - before.X).Meters, Documents.Rounding);
        Assert.Equal(-0.1, (after.Y - before.Y).Meters, Documents.Rounding);
        Assert.Equal(0.2, (after.Z - before.Z).Meters, Documents.Rounding);
        Assert.True(JsonNode.DeepEquals(Documents.Without(sheet, "turbo"), Documents.Without(moved, "turbo")));
    }
}
