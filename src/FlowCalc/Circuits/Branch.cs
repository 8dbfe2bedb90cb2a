namespace FlowCalc.Circuits;

/// <summary>A branch of a resistive network: a resistance in series with a source. Its current counts from <paramref name="From"/> to <paramref name="To"/>.</summary>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Resistance, Ω, 0 or more.</param>
/// <param name="Voltage">Voltage of the source, which drives current from the first end to the second, V.</param>
public readonly record struct Branch(int From, int To, double Resistance, double Voltage = 0);
