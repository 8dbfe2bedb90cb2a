using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Time scales at the greatest flow, which say how far the flow may be taken as steady at each instant.</summary>
/// <param name="Emptying">Contents over the greatest flow.</param>
/// <param name="Inertia">Time in which a full line comes to its flow, 2L/(u·S), of the slowest way to a nozzle.</param>
/// <param name="Acoustic">Time of a pressure wave there and back, 2L/c, of the longest way.</param>
/// <param name="Inventory">Contents of the line over the greatest flow.</param>
/// <param name="Lag">What inertia adds to the times, ln 2 of <paramref name="Inertia"/>.</param>
/// <param name="Verdict">What that means, in words.</param>
public sealed record QuasiSteadyCheck(Duration Emptying, Duration Inertia, Duration Acoustic, Duration Inventory, Duration Lag, string Verdict);
