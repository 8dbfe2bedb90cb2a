using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>
/// The search for the shortest time. Choices whose flow meets the wish are gathered from the greatest flow downwards, and the discharges of those with the greatest flow are followed: the
/// time goes by the flow, but not quite. It is a proof only where everything was gathered and followed.
/// </summary>
/// <param name="model">The choices.</param>
/// <param name="table">The same in solve order.</param>
/// <param name="finds">Where what meets the wish is kept.</param>
/// <param name="cancellation">Stops the search.</param>
internal sealed class TimeSearch(SizingModel model, ChoiceTable table, Finds finds, CancellationToken cancellation)
{
    const double Ratio = 1.03;

    /// <summary>Searches.</summary>
    /// <returns>A time that no choice that meets the wish is below, s, and whether the best found is proven to be the least, or that there is none.</returns>
    public (double Bound, bool IsProven) Run()
    {
        if (ShareBoxes.Of(table.Network, table.Wanted, model.Wish.Deviation) is not { } shares) return (double.PositiveInfinity, true);
        var search = new SliceSearch(model, table, () => double.MaxValue, finds, cancellation);
        var isWhole = true;
        foreach (var total in SliceList.Of(table, Ratio))
        {
            cancellation.ThrowIfCancellationRequested();
            // From here on the flow is so much less that no time would be shorter, as far as it can be told from the flow.
            if (finds.Best is { } best && finds.Times.IsSparing && total.High * WishTimes.Trust < best.Flow)
            {
                isWhole = false;
                break;
            }
            finds.Flows.Work += table.WorkOfSlice;
            if (finds.IsSpent) return (Least(), false);
            var slice = FlowSlice.Of(table, total, shares, cancellation);
            var bounds = new SubtreeBounds(table, slice);
            if (double.IsFinite(bounds.Least) && !search.Run(slice, bounds)) return (Least(), false);
        }
        return isWhole && double.IsPositiveInfinity(finds.Untimed) ? (finds.Best?.Times!.Value.Most ?? double.PositiveInfinity, true) : (Least(), false);
    }

    // What is asked of the nozzles, through the largest of them at the bottle's first pressure without any loss: of the coldest or slowest case.
    double Least()
    {
        if (model.Layout.Supply is not BottleSupply { Bottle: var bottle } || model.Layout.Agent is not LiquidAgent liquid) return 0;
        var requirement = ApplicationRequirement.For(model.Layout);
        var mass = (requirement?.Part ?? LayoutDischarge.UsualPart)
            * (requirement is { OfContents: false, Quantity: { } quantity } ? quantity.Kilograms : bottle.Fill.Kilograms * bottle.Count);
        var most = 0.0;
        foreach (var temperature in CaseList.Of(model.Layout).Temperatures)
        {
            var conditions = CaseConditions.Of(model.Layout, liquid, bottle, temperature);
            if (conditions.Failure is null)
                most = Math.Max(most, mass / SliceList.Most(table, conditions.Pressure - model.Layout.AmbientPressure.Pascals, conditions.Density));
        }
        return most;
    }
}
