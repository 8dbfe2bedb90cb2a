using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A resistor.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Its resistance.</param>
public sealed record Resistor(string Name, int From, int To, ElectricResistance Resistance) : CircuitPart(Name, From, To, Resistance);
