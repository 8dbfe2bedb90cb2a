using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Routes;

/// <summary>What is cut, bent, clipped, sleeved and ordered to build a layout.</summary>
/// <param name="Runs">One entry a run, in the layout's order.</param>
/// <param name="Tubes">One entry a tube, by first use.</param>
/// <param name="Items">What to order besides tube, by first use.</param>
/// <param name="Assumptions">What the document left open, and what was taken, of the cutting alone.</param>
public sealed record CutList(ImmutableArray<RunCut> Runs, ImmutableArray<TubeOrder> Tubes, ImmutableArray<OrderItem> Items, ImmutableArray<Assumption> Assumptions)
{
    /// <summary>Works out the cut list of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The list; the same layout gives the same list.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    /// <remarks>
    /// Cut length = straights + arcs + the allowances of both ends; setback R·tan(θ/2), arc R·θ (plane geometry). Its time grows with the layout's size, but for the packing, whose
    /// search for the least stock has a bound of its own.
    /// </remarks>
    public static CutList Of(Layout layout, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var log = new AssumptionLog();
        var bench = new Bench(layout, log);
        var clips = new ClipPlaces(layout, log, cancellationToken);
        var runs = ImmutableArray.CreateBuilder<RunCut>(layout.Runs.Length);
        for (var index = 0; index < layout.Runs.Length; index++)
        {
            if ((index & 0xFF) == 0) cancellationToken.ThrowIfCancellationRequested();
            var run = layout.Runs[index];
            long bends = 0, fittings = 0;
            if (run.Route is null)
                foreach (var bend in run.Bends) bends += bend.Count;
            foreach (var fitting in run.Fittings)
                if (!PieceCutter.IsCutAt(fitting)) fittings += fitting.Count;
            runs.Add(new RunCut(index, run.Length, PieceCutter.Cut(layout, index, bench, log), bends, fittings, clips.Of(index), Sleeves(run)));
        }
        var list = runs.MoveToImmutable();
        return new CutList(list, TubeOrders.Of(layout, list, bench, log, cancellationToken), OrderItems.Of(layout, list, cancellationToken), log.ToArray());
    }

    static ImmutableArray<Sleeve> Sleeves(Run run)
    {
        if (run.HotPlaces.IsEmpty) return [];
        var sleeves = ImmutableArray.CreateBuilder<Sleeve>();
        var inside = UnitsNet.Length.FromMeters((run.Tube.OutsideDiameter ?? run.Tube.Bore).Meters + Sleeve.Play);
        foreach (var place in run.HotPlaces)
            if (place.IsSleeved)
                sleeves.Add(new Sleeve(
                    UnitsNet.Length.FromMeters(Math.Max(0, place.From.Meters - Sleeve.Beyond)), UnitsNet.Length.FromMeters(Math.Min(run.Length.Meters, place.To.Meters + Sleeve.Beyond)), inside));
        return sleeves.DrainToImmutable();
    }
}
