namespace FlowCalc.Networks;

/// <summary>How a solve ended. Look at <see cref="Converged"/> before using any flow.</summary>
/// <param name="Converged">True where the residuals are as small as promised.</param>
/// <param name="Iterations">Newton steps taken.</param>
/// <param name="MassResidual">Largest imbalance left at a point, relative to the total flow, dimensionless.</param>
/// <param name="PressureResidual">Largest imbalance left along a run, Pa.</param>
/// <param name="Failure">Why there is no answer; null where there is one.</param>
public sealed record SolveReport(bool Converged, int Iterations, double MassResidual, double PressureResidual, string? Failure);
