namespace FlowCalc.Circuits;

/// <summary>One thing that is wrong with a circuit.</summary>
/// <param name="Kind">What.</param>
/// <param name="Place">Index of the part; of a touch of the chassis, of the node.</param>
public readonly record struct CircuitFault(CircuitFaultKind Kind, int Place);
