using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Sheets;
using FlowCalc.Workbench.Sheets.Changes;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class NewNozzleTests
{
    [Fact]
    public void Tee_put_into_any_run_keeps_its_length_and_all_that_is_not_touched() => Documents.All(sheet =>
    {
        var layout = sheet.Layout!;
        for (var run = 0; run < layout.Runs.Length; run++)
        {
            if (RunSplit(sheet, run) is not { } outcome) continue;
            var (changed, nozzle) = outcome;
            var after = changed.Layout!;
            var tee = after.Points[after.Runs.Single(leg => after.Points[leg.To].Id == nozzle).From];
            var behind = after.Runs.Single(leg => after.Points[leg.From] == tee && leg.Leaves == TeePort.Run);
            var branch = after.Runs.Single(leg => after.Points[leg.From] == tee && leg.Leaves == TeePort.Branch);
            var before = after.Runs.Single(leg => after.Points[leg.To] == tee);

            Assert.Equal(layout.Runs[run].Length.Meters, before.Length.Meters + behind.Length.Meters, Documents.Rounding);
            Assert.Equal(layout.Runs[run].Rise.Meters, before.Rise.Meters + behind.Rise.Meters, Documents.Rounding);
            Assert.Equal(layout.Runs[run].Fittings.Length, before.Fittings.Length + behind.Fittings.Length);
            Assert.Equal(layout.Runs[run].Bends.Sum(bend => bend.Count), before.Bends.Concat(behind.Bends).Sum(bend => bend.Count));
            Assert.Equal([.. Documents.Nozzles(layout).Append(nozzle).Order(StringComparer.Ordinal)], Documents.Nozzles(after));
            Assert.True(JsonNode.DeepEquals(Documents.Without(sheet, layout.Runs[run].Id), Documents.Without(changed, nozzle, tee.Id, before.Id, behind.Id, branch.Id)));
        }
    });

    [Fact]
    public void Nozzle_made_two_leaves_all_else_as_it_was() => Documents.All(sheet =>
    {
        var layout = sheet.Layout!;
        for (var point = 0; point < layout.Points.Length; point++)
        {
            if (layout.Points[point] is not Nozzle old) continue;
            var (changed, nozzle) = AtNozzle(sheet, point);
            var after = changed.Layout!;
            var tee = after.Points[after.Runs.Single(leg => after.Points[leg.To].Id == nozzle).From];
            var fed = after.Runs.Single(leg => after.Points[leg.To] == tee);
            var legs = after.Runs.Where(leg => after.Points[leg.From] == tee).ToArray();

            Assert.Equal(2, legs.Length);
            Assert.Equal(layout.Runs.Single(leg => layout.Points[leg.To] == old).Length.Meters, fed.Length.Meters, Documents.Rounding);
            Assert.Equal(legs[0].Length.Meters, legs[1].Length.Meters, Documents.Rounding);
            Assert.Equal([.. Documents.Nozzles(layout).Append(nozzle).Order(StringComparer.Ordinal)], Documents.Nozzles(after));
            Assert.True(JsonNode.DeepEquals(
                Documents.Without(sheet, layout.Runs.Single(leg => layout.Points[leg.To] == old).Id, old.Id),
                Documents.Without(changed, [nozzle, tee.Id, fed.Id, old.Id, .. legs.Select(leg => leg.Id)])));
        }
    });

    [Theory]
    [InlineData("""{ "id": "bottle", "kind": "supply" }""")]
    [InlineData("""{ "id": "bottle", "kind": "supply", "at": ["1 ft", "0.2 m", "30 cm"] }""")]
    public void First_nozzle_of_an_empty_sheet_makes_it_a_layout(string supply)
    {
        var empty = Sheet.Of(EmptySheet.Text, TestContext.Current.CancellationToken).With(root => root["points"] = new JsonArray(JsonNode.Parse(supply)));
        string? why = "not asked";

        var changed = Documents.Changed(empty, root => NewNozzle.AtSupply(root, out why));

        Assert.Null(why);
        Assert.Equal(["N1"], Documents.Nozzles(changed.Layout!));
        Assert.Equal(1, Documents.Length(changed.Layout!), Documents.Rounding);
    }

    [Theory]
    [InlineData("tubes", "tube in stock")]
    [InlineData("nozzles", "nozzle in stock")]
    [InlineData("points", "no supply")]
    public void First_nozzle_without_what_it_takes_is_told_and_not_made(string missing, string told)
    {
        var root = JsonNode.Parse(EmptySheet.Text)!.AsObject();
        root.Remove(missing);

        Assert.Null(NewNozzle.AtSupply(root, out var why));
        Assert.Contains(told, why, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_with_clips_is_not_parted()
    {
        var root = JsonNode.Parse(Documents.Example("raid-pickup"))!.AsObject();
        root["runs"]![0]!.AsObject()["clips"] = new JsonArray("0.1 m");
        var sheet = Documents.Sound(root.ToJsonString());

        Assert.Null(NewNozzle.OnRun(root, sheet.Layout!, 0, out var why));
        Assert.Contains("clips", why, StringComparison.Ordinal);
    }

    internal static (Sheet Changed, string Nozzle)? RunSplit(Sheet sheet, int run)
    {
        string? path = null, why = null;
        var changed = sheet.With(root => path = NewNozzle.OnRun(root, sheet.Layout!, run, out why));
        if (why is not null) return null;
        return (Documents.Sound(changed.Text), path!["points/".Length..]);
    }

    internal static (Sheet Changed, string Nozzle) AtNozzle(Sheet sheet, int point)
    {
        string? path = null;
        var changed = Documents.Changed(sheet, root => path = NewNozzle.AtNozzle(root, sheet.Layout!, point, out _));
        return (changed, path!["points/".Length..]);
    }
}
