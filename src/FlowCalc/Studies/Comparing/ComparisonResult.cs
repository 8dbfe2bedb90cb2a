using System.Collections.Immutable;

namespace FlowCalc.Studies.Comparing;

/// <summary>Layouts side by side.</summary>
/// <param name="Results">The base first, then the variants in the request's order.</param>
/// <param name="Ranking">The same, best first.</param>
/// <param name="Nozzles">Every nozzle of any of them by id: those of the base in its order, then what variants add.</param>
public sealed record ComparisonResult(ImmutableArray<VariantResult> Results, ImmutableArray<RankedVariant> Ranking, ImmutableArray<ComparedNozzle> Nozzles);
