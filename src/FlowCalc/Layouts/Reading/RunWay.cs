using System.Collections.Immutable;

namespace FlowCalc.Layouts.Reading;

/// <summary>The way of a run.</summary>
/// <param name="Length">Developed length, m.</param>
/// <param name="Rise">Height of the end over the start, m.</param>
/// <param name="Bends">The bends.</param>
/// <param name="Route">The way in space; null for a run given by its length.</param>
readonly record struct RunWay(double Length, double Rise, ImmutableArray<Bend> Bends, RunRoute? Route);
