using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A contact that stays as it is set.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Resistance of the closed contact.</param>
/// <param name="ClosedIn">The states in which it is closed, each once; one or two of the three, or all.</param>
public sealed record Switch(string Name, int From, int To, ElectricResistance Resistance, ImmutableArray<CircuitState> ClosedIn) : CircuitPart(Name, From, To, Resistance);
