using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Findings.Cures;

/// <summary>Threaded tees exchanged for smooth ones.</summary>
static class TeeChanges
{
    /// <summary>The tee that a run leaves, made smooth; none where it is no threaded tee.</summary>
    public static LayoutChange? Smooth(FlowCase flowCase, int run)
    {
        var point = flowCase.Layout.Runs[run].From;
        return flowCase.Layout.Points[point] is not Tee { Body: TeeBody.Threaded } tee ? null
            : new LayoutChange(new CureChange($"points/{tee.Id}/body", "threaded", "smooth"), $"a smooth tee instead of a threaded one at {Wording.Id(tee.Id)}",
                flowCase.Layout with { Points = flowCase.Layout.Points.SetItem(point, tee with { Body = TeeBody.Smooth }) }, 0, 0, null);
    }
}
