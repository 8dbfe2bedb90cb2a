using System.Collections.Immutable;

namespace FlowCalc.Api.Compare;

/// <summary>One nozzle in each of the layouts compared.</summary>
/// <param name="Id">Its id.</param>
/// <param name="In">One entry a layout that has it and a flow, in the order of the answers.</param>
public sealed record ComparedNozzleAnswer(string Id, ImmutableArray<NozzleInAnswer> In);
