using FlowCalc.Layouts;
using FlowCalc.Workbench.Sheets;
using FlowCalc.Workbench.Sheets.Changes;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class RemovalTests
{
    [Fact]
    public void Nozzle_added_to_a_run_and_taken_away_gives_back_the_length_and_the_nozzles() => Documents.All(sheet =>
    {
        for (var run = 0; run < sheet.Layout!.Runs.Length; run++)
        {
            if (NewNozzleTests.RunSplit(sheet, run) is not { } outcome) continue;

            var back = Without(outcome.Changed, outcome.Nozzle);

            Assert.Equal(Documents.Nozzles(sheet.Layout), Documents.Nozzles(back.Layout!));
            Assert.Equal(Documents.Length(sheet.Layout), Documents.Length(back.Layout!), Documents.Rounding);
        }
    });

    [Fact]
    public void Any_end_can_be_taken_away_and_what_is_left_reads_without_faults() => Documents.All(sheet =>
    {
        var layout = sheet.Layout!;
        for (var point = 0; point < layout.Points.Length; point++)
        {
            if (layout.Points[point] is not (Nozzle or Cap) || layout.Points.OfType<Nozzle>().Count() < 2) continue;

            var left = Without(sheet, layout.Points[point].Id);

            Assert.DoesNotContain(layout.Points[point].Id, left.IdsOf("points"));
            if (left.Layout is { } after) Assert.True(Documents.Length(after) <= Documents.Length(layout) + Documents.Rounding);
        }
    });

    [Fact]
    public void Run_takes_all_that_hangs_on_it_and_nothing_else() => Documents.All(sheet =>
    {
        var layout = sheet.Layout!;
        for (var run = 0; run < layout.Runs.Length; run++)
        {
            var behind = Behind(layout, run);
            var kept = Documents.Nozzles(layout).Except(behind).ToArray();
            if (kept.Length == 0) continue;

            var left = Left(sheet.With(root => Removal.OfRun(root, layout, run)));

            Assert.Equal(kept, left.IdsOf("points").Intersect(Documents.Nozzles(layout)).Order(StringComparer.Ordinal));
        }
    });

    [Fact]
    public void Last_nozzle_leaves_the_supply_to_begin_anew_from()
    {
        var sheet = Sheet.Of(EmptySheet.Text, TestContext.Current.CancellationToken).With(root => NewNozzle.AtSupply(root, out _));

        var bare = sheet.With(root => Removal.OfPoint(root, sheet.Layout!, 1, out _));

        Assert.Equal(["bottle"], bare.IdsOf("points"));
        Assert.Equal(0, bare.CountAt("/runs"));
        Assert.Equal(["N1"], Documents.Nozzles(Documents.Changed(bare, root => NewNozzle.AtSupply(root, out _)).Layout!));
    }

    [Fact]
    public void Point_that_leads_on_stays()
    {
        var sheet = Documents.Sound(Documents.Example("raid-pickup"));
        string? why = null;

        var same = sheet.With(root => Removal.OfPoint(root, sheet.Layout!, Array.FindIndex([.. sheet.Layout!.Points], point => point is Tee), out why));

        Assert.Contains("leads on", why, StringComparison.Ordinal);
        Assert.Equal(sheet.IdsOf("points"), same.IdsOf("points"));
    }

    static Sheet Without(Sheet sheet, string point)
    {
        string? why = null;
        var changed = sheet.With(root => Removal.OfPoint(root, sheet.Layout!, Array.FindIndex([.. sheet.Layout!.Points], other => other.Id == point), out why));
        Assert.Null(why);
        return Left(changed);
    }

    // A zone that has lost its last nozzle still wants its share: that is told, and for the user to settle.
    static Sheet Left(Sheet changed)
    {
        Assert.DoesNotContain(changed.Faults, fault => !fault.Message.Contains("wants a share and no nozzle names it", StringComparison.Ordinal));
        return changed;
    }

    static HashSet<string> Behind(Layout layout, int run)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        for (var waiting = new Stack<int>([run]); waiting.TryPop(out var at);)
        {
            names.Add(layout.Points[layout.Runs[at].To].Id);
            foreach (var next in Enumerable.Range(0, layout.Runs.Length).Where(other => layout.Runs[other].From == layout.Runs[at].To)) waiting.Push(next);
        }
        return names;
    }
}
