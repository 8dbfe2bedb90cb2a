using FlowCalc.Flows;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Cures;

/// <summary>The change that evens out the shares, as each finding tells it.</summary>
/// <param name="flowCase">The layout as it is, with something wanted of a nozzle.</param>
/// <param name="best">The change that was tried.</param>
sealed class BalanceCure(FlowCase flowCase, Trial best)
{
    readonly int worstBefore = Imbalance.Worst(flowCase.Flow).Nozzle;

    /// <summary>The cure as it is for one nozzle, by its place among the flow's nozzles.</summary>
    public Cure? OfNozzle(int nozzle)
    {
        var id = Wording.Id(flowCase.PointId(flowCase.Flow.Nozzles[nozzle].Point));
        return Told(id, NozzleShares.Deviation(flowCase.Flow.Nozzles[nozzle]), NozzleShares.Deviation(best.Flow.Nozzles[nozzle]));
    }

    /// <summary>The cure as it is for one zone, by its place among the flow's zones.</summary>
    public Cure? OfZone(int zone) =>
        Told($"the zone {Wording.Id(flowCase.Flow.Zones[zone].Zone)}", flowCase.Flow.Zones[zone].Deviation, best.Flow.Zones[zone].Deviation);

    // The change is the best for the layout as a whole; a nozzle that it moves further from its share has no cure in it.
    Cure? Told(string subject, double? before, double? after) =>
        before is not { } from || after is not { } to || !double.IsFinite(to) || !(Imbalance.Badness(to) < Imbalance.Badness(from)) ? null
            : new Cure($"With {best.Change.Words}, the deviation of {subject} goes from {Wording.Signed(from)} to {Wording.Signed(to)}, {Rest()}.",
                [best.Change.Change], new Measure(from, null), new Measure(to, null));

    string Rest()
    {
        var (before, nozzle) = (flowCase.Flow.Nozzles[worstBefore], best.Flow.Nozzles[best.WorstNozzle]);
        var doubt = best.Change.Doubt is { } why ? $"; but {why}" : "";
        return $"and the worst nozzle is then {Named(nozzle)} instead of {Named(before)}{doubt}";
    }

    string Named(NozzleFlow nozzle) => $"{Wording.Id(flowCase.PointId(nozzle.Point))} at {Wording.Signed(NozzleShares.Deviation(nozzle) ?? -1)}";
}
