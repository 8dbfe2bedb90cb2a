using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Routes;

namespace FlowCalc.Explanations;

/// <summary>Explains a cut list: which equations gave its lengths, marks, clips and stock, with the numbers in place.</summary>
public static class CutListExplainer
{
    static readonly string[] LeftOut =
    [
        "Which piece is cut from which bar: it is searched (first-fit decreasing, the fullest bars, then branch and bound of counted effort); what is shown holds for the bars found, and the bound is what none can go below. Where leastPossible of the answer is over that bound, the search has gone through every way of cutting.",
        "The place of every single clip between two that are fixed: each is a span after the one before.",
        "Clips that the document places, and findings: those compare what is shown here with a limit that the finding states.",
        "Bends of a run that is given by its length: they have no place, and their arcs are in the document's length.",
    ];

    /// <summary>How much there is to explain: runs, bends, fittings, stated clips and hot places.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>Their number together.</returns>
    public static long Parts(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var parts = 0L;
        foreach (var run in layout.Runs) parts += 1L + run.Bends.Length + run.Fittings.Length + run.HotPlaces.Length + (run.Clips?.Length ?? 0);
        return parts;
    }

    /// <summary>The explanation of a cut list.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="list">Its cut list, as <see cref="CutList.Of"/> gave it.</param>
    /// <param name="cancellationToken">Asked at every run and tube.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CutListExplanation Of(Layout layout, CutList list, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(list);
        var log = new StepLog();
        // What the bench takes for what the document leaves open is listed with the list itself.
        var bench = new Bench(layout, new AssumptionLog());
        foreach (var cut in list.Runs)
        {
            cancellationToken.ThrowIfCancellationRequested();
            var run = layout.Runs[cut.Run];
            log.At(ExplainedPlace.Run, run.Id);
            if (run.Route is { } route && layout.Points[run.From].At is { } from && layout.Points[run.To].At is { } to) RouteSteps.Add(log, run, route, [from, .. route.Corners, to]);
            var bend = 0;
            foreach (var piece in cut.Pieces)
            {
                PieceSteps.Add(log, layout, run, piece, bend, bench);
                bend += piece.Bends.Length;
            }
            ClipSteps.Add(log, layout, run, cut.Clips, cancellationToken);
            ClipSteps.Sleeves(log, run, cut.Sleeves);
        }
        foreach (var order in list.Tubes)
        {
            cancellationToken.ThrowIfCancellationRequested();
            log.At(ExplainedPlace.Tube, TubeLabel.Of(order.Tube));
            OrderSteps.Add(log, layout, list, order, bench);
            if (order.Stock is { } plan && TubeOrders.StockOf(layout, order.Tube) is { } stock) StockSteps.Add(log, order, plan, StockPacking.Problem(order.Pieces, stock, bench.Kerf), cancellationToken);
        }
        return new(FlowExplainer.Sorted(log), log.Take(), [.. LeftOut]);
    }
}
