namespace FlowCalc.Circuits;

/// <summary>The current of a part in one setting, whatever its direction.</summary>
/// <param name="Part">Index of the part.</param>
/// <param name="Lowest">With the source at its weakest, A.</param>
/// <param name="Highest">With the source at its strongest, A.</param>
public readonly record struct CurrentRange(int Part, double Lowest, double Highest);
