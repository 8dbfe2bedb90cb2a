using System.Collections.Immutable;

namespace FlowCalc.Routes;

/// <summary>Sizes in bins.</summary>
/// <param name="Bins">The bins, each the indices of its sizes, largest first.</param>
/// <param name="Cost">What the bins cost together.</param>
sealed record Packing(ImmutableArray<ImmutableArray<int>> Bins, long Cost);
