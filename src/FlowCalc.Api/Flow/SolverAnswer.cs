namespace FlowCalc.Api.Flow;

/// <summary>How the solve ended.</summary>
/// <param name="Iterations">Newton steps taken.</param>
/// <param name="MassResidual">Largest imbalance left at a point, relative to the total flow.</param>
public sealed record SolverAnswer(int Iterations, double MassResidual);
