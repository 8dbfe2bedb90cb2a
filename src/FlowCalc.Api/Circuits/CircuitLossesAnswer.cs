namespace FlowCalc.Api.Circuits;

/// <summary>Where what the source gives goes, as parts that add up to 1; in a single loop each is the part of the voltage as well.</summary>
/// <param name="Source">Within the source.</param>
/// <param name="Wires">In wires.</param>
/// <param name="Contacts">In connectors, switches, pushes and fuses.</param>
/// <param name="Actuators">In actuators.</param>
/// <param name="Others">In lamps and resistors.</param>
public sealed record CircuitLossesAnswer(double Source, double Wires, double Contacts, double Actuators, double Others);
