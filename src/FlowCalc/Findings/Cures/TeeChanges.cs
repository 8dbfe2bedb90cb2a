using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Losses;

namespace FlowCalc.Findings.Cures;

/// <summary>Tees exchanged for smooth ones, and tees turned round.</summary>
static class TeeChanges
{
    /// <summary>The tee that a run leaves, made smooth; none where it is no threaded tee.</summary>
    public static IEnumerable<LayoutChange> Smooth(JudgedLayout judged, int run)
    {
        var point = judged.Layout.Runs[run].From;
        if (judged.Layout.Points[point] is Tee { Body: TeeBody.Threaded } tee)
            yield return new LayoutChange([new CureChange(EditPath.Of("points", tee.Id, "body"), "threaded", "smooth")], $"a smooth tee instead of a threaded one at {Wording.Id(tee.Id)}",
                With(judged.Layout, point, tee with { Body = TeeBody.Smooth }), 0, 0, null);
    }

    /// <summary>The tee that a run leaves, fed through another port or with its outlets exchanged; none where it is no tee, or where places say how it lies.</summary>
    public static IEnumerable<LayoutChange> Turned(JudgedLayout judged, int run) =>
        judged.Layout.Points[judged.Layout.Runs[run].From].At is null ? TurnedInPlace(judged, run) : [];

    /// <summary>The tee that a run leaves, fed through another port or with its outlets exchanged, wherever its tubes lead; none where it is no tee.</summary>
    public static IEnumerable<LayoutChange> TurnedInPlace(JudgedLayout judged, int run)
    {
        var point = judged.Layout.Runs[run].From;
        var legs = judged.Leaving(point);
        if (judged.Layout.Points[point] is not Tee tee || legs.Length != 2) return [];
        var (first, second) = (legs[0], legs[1]);
        if (tee.FedThrough == TeePort.Branch)
            return [FedThroughRun(judged, point, tee, first, second), FedThroughRun(judged, point, tee, second, first)];
        return judged.Layout.Runs[first].Leaves == TeePort.Branch
            ? [Exchanged(judged, tee, second, first), FedThroughBranch(judged, point, tee, second, first)]
            : [Exchanged(judged, tee, first, second), FedThroughBranch(judged, point, tee, first, second)];
    }

    static LayoutChange FedThroughRun(JudgedLayout judged, int point, Tee tee, int straight, int side)
    {
        var (run, branch) = (judged.Layout.Runs[straight], judged.Layout.Runs[side]);
        return new(
            [new(Fed(tee), "branch", "run"), new(Port(run), null, "run"), new(Port(branch), null, "branch")],
            $"{Wording.Id(tee.Id)} fed through its run, {Wording.Id(run.Id)} leaving by the run and {Wording.Id(branch.Id)} by the branch",
            Leaving(With(judged.Layout, point, tee with { FedThrough = TeePort.Run }), straight, side, TeePort.Run, TeePort.Branch), 0, 0, null);
    }

    static LayoutChange FedThroughBranch(JudgedLayout judged, int point, Tee tee, int straight, int side)
    {
        var (run, branch) = (judged.Layout.Runs[straight], judged.Layout.Runs[side]);
        return new(
            [new(Fed(tee), "run", "branch"), new(Port(run), "run", null), new(Port(branch), "branch", null)],
            $"{Wording.Id(tee.Id)} fed through its branch", Leaving(With(judged.Layout, point, tee with { FedThrough = TeePort.Branch }), straight, side, null, null), 0, 0, null);
    }

    static LayoutChange Exchanged(JudgedLayout judged, Tee tee, int straight, int side)
    {
        var (run, branch) = (judged.Layout.Runs[straight], judged.Layout.Runs[side]);
        return new(
            [new(Port(run), "run", "branch"), new(Port(branch), "branch", "run")],
            $"{Wording.Id(tee.Id)} turned round, {Wording.Id(branch.Id)} leaving by the run and {Wording.Id(run.Id)} by the branch",
            Leaving(judged.Layout, straight, side, TeePort.Branch, TeePort.Run), 0, 0, null);
    }

    static string Fed(Tee tee) => EditPath.Of("points", tee.Id, "fedThrough");

    static string Port(Run run) => EditPath.Of("runs", run.Id, "leaves");

    static Layout With(Layout layout, int point, Tee tee) => layout with { Points = layout.Points.SetItem(point, tee) };

    static Layout Leaving(Layout layout, int first, int second, TeePort? firstPort, TeePort? secondPort) => layout with
    {
        Runs = layout.Runs.SetItem(first, layout.Runs[first] with { Leaves = firstPort }).SetItem(second, layout.Runs[second] with { Leaves = secondPort }),
    };
}
