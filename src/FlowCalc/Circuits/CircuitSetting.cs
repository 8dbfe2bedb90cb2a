namespace FlowCalc.Circuits;

/// <summary>How a circuit stands when it is solved.</summary>
/// <param name="State">How its switches are set.</param>
/// <param name="Pressed">Index of the part that is pressed; −1 for none.</param>
/// <param name="IsFresh">Whether the source is at its strongest; else at its weakest.</param>
/// <param name="Fault">What is wrong with it; null for nothing.</param>
/// <param name="WorstLamp">Index of a lamp whose diode is shorted and whose resistor is at its low end; −1 for none.</param>
public readonly record struct CircuitSetting(CircuitState State, int Pressed, bool IsFresh, CircuitFault? Fault = null, int WorstLamp = -1);
