using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>How the pieces of one tube are cut from its stock. Offcuts are never joined: each joint is a loss and may leak.</summary>
/// <param name="IsCoil">Whether the stock is a coil.</param>
/// <param name="Bars">The bars or coils.</param>
/// <param name="TooLong">Pieces longer than any stock, as indices in the pieces of the tube's order.</param>
/// <param name="Used">Stock used, all bars together.</param>
/// <param name="LeastPossible">No way of cutting uses less than this.</param>
/// <param name="SpareBars">Further bars of the longest stock, so that all together hold what is ordered with its spare.</param>
public sealed record StockPlan(bool IsCoil, ImmutableArray<StockBar> Bars, ImmutableArray<int> TooLong, Length Used, Length LeastPossible, long SpareBars)
{
    /// <summary>Whether it is certain that no way of cutting uses less.</summary>
    public bool IsLeast => Used <= LeastPossible;
}
