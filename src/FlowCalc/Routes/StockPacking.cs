using System.Collections.Immutable;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Packs the pieces of one tube into the lengths of its stock, so that as little stock as possible is used.</summary>
/// <remarks>
/// Lengths are whole micrometres, so that the packing is exact. A piece takes its sawn length and a kerf; a bar gives its length and a kerf, as the last cut may fall beyond its end.
/// First-fit decreasing and the fullest bars give a packing, bounds say how far it is from the least, and where they differ a search of bounded effort looks between them.
/// </remarks>
static class StockPacking
{
    /// <summary>Micrometres in a metre.</summary>
    public const double Grains = 1e6;

    /// <summary>Packs.</summary>
    /// <param name="pieces">The pieces, each of which is cut.</param>
    /// <param name="stock">The stock, each length any number of times.</param>
    /// <param name="kerf">Width of a cut, m.</param>
    /// <param name="ordered">Length to be ordered with its spare, m.</param>
    /// <param name="effort">What is left of the search's effort.</param>
    /// <param name="cancellation">Ends the packing early.</param>
    public static StockPlan Pack(ImmutableArray<TubePiece> pieces, TubeStock stock, double kerf, double ordered, SearchEffort effort, CancellationToken cancellation)
    {
        var (problem, fitting) = Problem(pieces, stock, kerf);
        var (packing, least) = PackingSearch.Best(problem, effort, cancellation);
        var bars = packing.Bins.Select(bin => Bar(problem, bin, fitting)).ToImmutableArray();
        var used = packing.Cost / Grains;
        var longest = (problem.Largest - problem.Kerf) / Grains;
        return new StockPlan(stock.IsCoil, bars, [.. Enumerable.Range(0, pieces.Length).Except(fitting)],
            Length.FromMeters(used), Length.FromMeters(least / Grains), fitting.Length == 0 ? 0 : (long)Math.Ceiling(Math.Max(0, ordered - used) / longest - 1e-9));
    }

    /// <summary>The pieces that fit into the stock as sizes, in whole micrometres; and which piece each is.</summary>
    /// <param name="pieces">The pieces, each of which is cut.</param>
    /// <param name="stock">The stock.</param>
    /// <param name="kerf">Width of a cut, m.</param>
    public static (PackingProblem Problem, int[] Fitting) Problem(ImmutableArray<TubePiece> pieces, TubeStock stock, double kerf)
    {
        var cut = (long)Math.Ceiling(kerf * Grains - 1e-3);
        long[] lengths = [.. stock.Lengths.Select(length => (long)Math.Floor(length.Meters * Grains + 1e-3)).Distinct().Order()];
        var sizes = new long[pieces.Length];
        for (var piece = 0; piece < sizes.Length; piece++) sizes[piece] = (long)Math.Ceiling(pieces[piece].Sawn!.Value.Meters * Grains - 1e-3);
        int[] fitting = [.. Enumerable.Range(0, sizes.Length).Where(piece => sizes[piece] <= lengths[^1]).OrderByDescending(piece => sizes[piece]).ThenBy(piece => piece)];
        return (new PackingProblem([.. fitting.Select(piece => sizes[piece] + cut)], [.. lengths.Select(length => length + cut)], cut), fitting);
    }

    static StockBar Bar(PackingProblem problem, ImmutableArray<int> bin, int[] fitting)
    {
        var content = problem.Content(bin);
        var length = problem.Capacity(content) - problem.Kerf;
        return new StockBar(Length.FromMeters(length / Grains), [.. bin.Select(item => fitting[item])], Length.FromMeters(Math.Max(0, length - content) / Grains));
    }
}
