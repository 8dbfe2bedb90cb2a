using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Discharge;

/// <summary>Time scales at the greatest flow, which say how far the flow may be taken as steady at each instant.</summary>
/// <param name="Emptying">Contents over the greatest flow.</param>
/// <param name="Inertia">Time in which a full line comes to its flow, on the slowest way to a nozzle.</param>
/// <param name="Acoustic">Time of a pressure wave there and back, on the longest way.</param>
/// <param name="Inventory">Contents of the line over the greatest flow.</param>
/// <param name="Lag">What inertia adds to the times told.</param>
/// <param name="Verdict">What that means.</param>
public sealed record QuasiSteadyAnswer(Quantity Emptying, Quantity Inertia, Quantity Acoustic, Quantity Inventory, Quantity Lag, string Verdict);
