using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Calibration;

/// <summary>How the system was tested.</summary>
/// <param name="Agent">The liquid, by its id.</param>
/// <param name="Temperature">Its temperature.</param>
/// <param name="Density">Its density.</param>
/// <param name="SupplyPressure">Total pressure held at the supply point; null where the discharge of the bottle was timed.</param>
public sealed record TestAnswer(string Agent, Quantity Temperature, Quantity Density, Quantity? SupplyPressure);
