using System.Collections.Immutable;

namespace FlowCalc.Studies.Comparing;

/// <summary>What is to be compared.</summary>
/// <param name="Base">The layout that the others are held against.</param>
/// <param name="Variants">The others, in the request's order.</param>
public sealed record CompareRequest(Variant Base, ImmutableArray<Variant> Variants);
