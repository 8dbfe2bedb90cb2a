using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A contact that is closed while somebody presses or pulls it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Resistance of the closed contact.</param>
/// <param name="IsForFiring">Whether it is there to fire; else it is there to test.</param>
public sealed record Push(string Name, int From, int To, ElectricResistance Resistance, bool IsForFiring) : CircuitPart(Name, From, To, Resistance);
