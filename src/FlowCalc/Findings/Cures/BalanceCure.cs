using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>The change that evens out the shares, as each finding tells it.</summary>
/// <param name="flowCase">The layout as it is.</param>
/// <param name="best">The change that was tried.</param>
sealed class BalanceCure(FlowCase flowCase, Trial best)
{
    /// <summary>The cure as it is for one nozzle, by its place among the flow's nozzles.</summary>
    public Cure? OfNozzle(int nozzle)
    {
        var id = Wording.Id(flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point));
        return Told(id, flowCase.Flow.Nozzles[nozzle].Deviation, best.Flow.Nozzles[nozzle].Deviation);
    }

    /// <summary>The cure as it is for one zone, by its place among the flow's zones.</summary>
    public Cure? OfZone(int zone) =>
        Told($"the zone {Wording.Id(flowCase.Flow.Zones[zone].Zone)}", flowCase.Flow.Zones[zone].Deviation, best.Flow.Zones[zone].Deviation);

    // The change is the best for the layout as a whole; a nozzle that it moves further from its share has no cure in it.
    Cure? Told(string subject, double? before, double? after) =>
        before is not { } from || after is not { } to || Math.Abs(to) >= Math.Abs(from) ? null
            : new Cure($"{Start()}, {subject} goes from {Wording.Signed(from)} to {Wording.Signed(to)} of its wanted share; {Rest()}.",
                [best.Change.Change], new Measure(from, null), new Measure(to, null));

    string Start() => $"With {best.Change.Words}";

    string Rest()
    {
        var (before, _) = Imbalance.Worst(flowCase.Flow);
        var worst = best.Flow.Nozzles[best.WorstNozzle];
        var doubt = best.Change.Doubt is { } why ? $", but {why}" : "";
        return $"the worst nozzle is then {Wording.Id(flowCase.PointId(worst.Point))} at {Wording.Signed(worst.Deviation ?? 0)}, where it is {Wording.Percent(before)} off as the layout stands{doubt}";
    }
}
