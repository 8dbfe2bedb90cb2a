using FlowCalc.Routes;

namespace FlowCalc.Explanations;

/// <summary>How the pieces of a tube are cut from its stock, and what no way of cutting goes below.</summary>
internal static class StockSteps
{
    /// <summary>Writes a plan down.</summary>
    /// <param name="log">Where to; it stands at the tube.</param>
    /// <param name="order">The order.</param>
    /// <param name="plan">How it is cut.</param>
    /// <param name="packed">The pieces as they were packed, in whole micrometres, and which piece each is.</param>
    /// <param name="cancellationToken">Asked now and then.</param>
    public static void Add(StepLog log, TubeOrder order, StockPlan plan, (PackingProblem Problem, int[] Fitting) packed, CancellationToken cancellationToken)
    {
        var (problem, fitting) = packed;
        if (fitting.Length == 0) return;
        var size = new Dictionary<int, double>();
        for (var item = 0; item < fitting.Length; item++) size[fitting[item]] = Metres(problem.Sizes[item]);
        var word = plan.IsCoil ? "coil" : "bar";
        for (var bar = 0; bar < plan.Bars.Length; bar++)
        {
            double[] pieces = [.. plan.Bars[bar].Pieces.Select(piece => size[piece])];
            var content = log.Sum(OrderEquations.BarContent, $"{word} {bar + 1}", pieces.Sum(), pieces);
            log.Add(OrderEquations.Offcut, $"{word} {bar + 1}", plan.Bars[bar].Offcut.Meters, plan.Bars[bar].Length.Meters, content);
        }
        log.Sum(OrderEquations.TotalLength, "stock used", plan.Used.Meters, plan.Bars.Select(bar => bar.Length.Meters));
        var longest = Metres(problem.Largest - problem.Kerf);
        Bound(log, problem, longest, cancellationToken);
        log.Add(OrderEquations.SpareBars, "spare", plan.SpareBars, order.Order.Meters, plan.Used.Meters, longest);
    }

    static void Bound(StepLog log, PackingProblem problem, double longest, CancellationToken cancellationToken)
    {
        const string part = "least stock";
        var (terms, kerf, shortest) = (PackingBound.Terms(problem, cancellationToken), Metres(problem.Kerf), Metres(problem.Capacities[0] - problem.Kerf));
        var content = log.Add(OrderEquations.ContentBound, part, Metres(terms.ByContent), Metres(terms.Content), shortest, kerf, Metres(problem.Grain));
        var large = log.Sum(OrderEquations.LongBound, part, Metres(terms.Large), problem.Sizes.TakeWhile(size => size > problem.Largest / 2.0).Select(size => Metres(problem.Cost(size))));
        log.Add(OrderEquations.BinBound, part, terms.Bins, terms.Half, Metres(terms.Rest), Metres(terms.Room), longest, kerf);
        log.Add(OrderEquations.LeastStock, part, Metres(terms.Least), content, large, terms.Bins, shortest);
    }

    static double Metres(long micrometres) => micrometres / StockPacking.Grains;
}
