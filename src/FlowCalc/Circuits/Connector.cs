using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A pair of contacts that is joined once: a connector, a terminal, a crimp.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Resistance of the contact when it is sound.</param>
public sealed record Connector(string Name, int From, int To, ElectricResistance Resistance) : CircuitPart(Name, From, To, Resistance);
