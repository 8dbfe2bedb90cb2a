using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>How the pieces of a tube are cut from its stock. Offcuts are never joined.</summary>
/// <param name="Kind">Bars or a coil.</param>
/// <param name="Bars">The bars or coils.</param>
/// <param name="TooLong">Pieces longer than any stock.</param>
/// <param name="Used">Stock used, all bars together.</param>
/// <param name="LeastPossible">No way of cutting uses less than this.</param>
/// <param name="IsLeast">Whether it is certain that no way of cutting uses less.</param>
/// <param name="SpareBars">Further bars of the longest stock, so that all together hold what is ordered with its spare.</param>
public sealed record StockAnswer(
    [property: AllowedValues("bar", "coil")] string Kind,
    ImmutableArray<BarAnswer> Bars,
    ImmutableArray<PieceNameAnswer> TooLong,
    Quantity Used,
    Quantity LeastPossible,
    bool IsLeast,
    long SpareBars);
