using System.Collections.Immutable;

namespace FlowCalc.Studies.Comparing;

/// <summary>One nozzle in each of the layouts compared.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Places">One entry a result; null where that layout has no such nozzle, or no flow.</param>
public sealed record ComparedNozzle(string Id, ImmutableArray<NozzlePlace?> Places);
