using System.Collections.Immutable;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>All that is cut of one tube.</summary>
/// <param name="Tube">The tube.</param>
/// <param name="Pieces">The pieces that are cut, in the order of runs.</param>
/// <param name="Finished">Length of all finished pieces.</param>
/// <param name="Order">Length to order: all that is sawn, a kerf each, and the spare.</param>
/// <param name="Mass">Mass of the finished pieces; null where wall or material are not known.</param>
/// <param name="Filled">Volume inside its runs, full.</param>
/// <param name="Stock">How they are cut from the stock; null where none is stated.</param>
public sealed record TubeOrder(Tube Tube, ImmutableArray<TubePiece> Pieces, Length Finished, Length Order, Mass? Mass, Volume Filled, StockPlan? Stock);
