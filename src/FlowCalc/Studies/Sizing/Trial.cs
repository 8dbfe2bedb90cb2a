namespace FlowCalc.Studies.Sizing;

/// <summary>A choice for every group, and the flow with it.</summary>
/// <param name="Choices">Choice of each group.</param>
/// <param name="Flow">Flow of all nozzles together, kg/s; NaN where the flow was not found.</param>
/// <param name="Worst">Largest deviation from a wanted share without sign, dimensionless; infinite where the flow was not found.</param>
/// <param name="Spread">Sum of the squared logarithms of share over wanted share: what a search can follow where the largest deviation alone would stand still.</param>
/// <param name="LeastPressure">Lowest absolute pressure at a nozzle, Pa; −∞ where the flow was not found.</param>
/// <param name="Sum">What the objective adds up over runs and nozzles: changes, cost or mass; 0 for other objectives.</param>
/// <param name="Changes">Runs and nozzles that are exchanged.</param>
internal sealed record Trial(byte[] Choices, double Flow, double Worst, double Spread, double LeastPressure, double Sum, int Changes)
{
    /// <summary>Shortest and longest time of the required part over the cases, s, where the discharge was followed; infinite where a case never gets there.</summary>
    public (double Least, double Most)? Times { get; init; }

    /// <summary>Whether a flow was found.</summary>
    public bool IsSolved => double.IsFinite(Flow);
}
