using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A part of the circuit with two ends.</summary>
/// <param name="Name">Its name, which no other part has.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end; another than <paramref name="From"/>.</param>
/// <param name="Resistance">Its resistance while it conducts, at its own temperature; over 0.</param>
public abstract record CircuitPart(string Name, int From, int To, ElectricResistance Resistance);
