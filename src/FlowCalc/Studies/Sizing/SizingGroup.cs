using System.Collections.Immutable;

namespace FlowCalc.Studies.Sizing;

/// <summary>What keeps one choice for all of it: runs in one tube, or nozzles of one size. One of the two is empty.</summary>
/// <param name="Runs">Indices in <see cref="Layouts.Layout.Runs"/>.</param>
/// <param name="Nozzles">Indices of nozzles in <see cref="Layouts.Layout.Points"/>.</param>
public sealed record SizingGroup(ImmutableArray<int> Runs, ImmutableArray<int> Nozzles);
