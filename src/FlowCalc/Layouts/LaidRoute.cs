using System.Collections.Immutable;

namespace FlowCalc.Layouts;

/// <summary>A tube laid from place to place.</summary>
/// <param name="Length">Developed length of the centre line, m.</param>
/// <param name="Rise">Height of the end over the start, m.</param>
/// <param name="Bends">The bends in order.</param>
/// <param name="Route">Directions, straights and corners.</param>
sealed record LaidRoute(double Length, double Rise, ImmutableArray<Bend> Bends, RunRoute Route);
