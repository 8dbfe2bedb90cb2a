using System.Collections.Immutable;
using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Coverage;

/// <summary>Which nozzles reach a target.</summary>
/// <param name="Target">The target.</param>
/// <param name="Sights">How every nozzle of its zone whose spray is known stands to it, in the order of the points.</param>
public sealed record TargetCover(Target Target, ImmutableArray<TargetSight> Sights)
{
    /// <summary>Whether a nozzle reaches it.</summary>
    public bool IsCovered => Sights.Any(sight => sight.Reaches);
}
