namespace FlowCalc.Flows;

/// <summary>A band of shares.</summary>
/// <param name="Low">Least, 0 to 1.</param>
/// <param name="High">Greatest, 0 to 1.</param>
public readonly record struct ShareBand(double Low, double High);
