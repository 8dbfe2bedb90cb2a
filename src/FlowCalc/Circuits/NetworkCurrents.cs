using System.Collections.Immutable;

namespace FlowCalc.Circuits;

/// <summary>The currents of a resistive network.</summary>
/// <param name="Potentials">Potential of every node, V; the least node of each part that hangs together is at 0.</param>
/// <param name="Currents">Current of every branch, A, from its first end to its second.</param>
public sealed record NetworkCurrents(ImmutableArray<double> Potentials, ImmutableArray<double> Currents);
