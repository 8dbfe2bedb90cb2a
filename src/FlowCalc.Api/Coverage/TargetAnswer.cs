using System.Collections.Immutable;

namespace FlowCalc.Api.Coverage;

/// <summary>Which nozzles reach a target.</summary>
/// <param name="Id">The target.</param>
/// <param name="Zone">Its zone; null for none.</param>
/// <param name="Covered">Whether a nozzle reaches it.</param>
/// <param name="Nozzles">How every nozzle of its zone whose spray is known stands to it.</param>
public sealed record TargetAnswer(string Id, string? Zone, bool Covered, ImmutableArray<SightAnswer> Nozzles);
