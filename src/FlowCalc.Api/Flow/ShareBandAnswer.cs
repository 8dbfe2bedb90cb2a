namespace FlowCalc.Api.Flow;

/// <summary>A band of a nozzle's shares.</summary>
/// <param name="Id">Id of the nozzle's point.</param>
/// <param name="Low">Least, 0 to 1.</param>
/// <param name="High">Greatest, 0 to 1.</param>
public readonly record struct ShareBandAnswer(string Id, double Low, double High);
