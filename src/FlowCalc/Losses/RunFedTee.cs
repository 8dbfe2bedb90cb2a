namespace FlowCalc.Losses;

/// <summary>Loss coefficients of a 90° tee fed through its run, on the inlet's velocity head, with their slopes.</summary>
/// <remarks>
/// The equations and their source are told at <see cref="RunFedTeeShape"/>. The run's coefficient is below 0 for some shares: that is recovery
/// of pressure and is kept; taken over both outlets the tee never gains energy. Real tees scatter by ±0.15 about the smooth form.
/// </remarks>
public static class RunFedTee
{
    /// <summary>Whether the correlation covers a tee: a branch no wider than the run, its edge sharp or rounded up to one bore.</summary>
    /// <param name="boreRatio">Branch bore over run bore, any, dimensionless.</param>
    /// <param name="edgeRadiusOverBranchBore">Radius of the branch's edge over branch bore, any, dimensionless.</param>
    /// <returns>True within the correlation's geometry.</returns>
    public static bool IsInRange(double boreRatio, double edgeRadiusOverBranchBore) =>
        boreRatio is > 0 and <= 1 && edgeRadiusOverBranchBore is >= 0 and <= 1;

    /// <summary>Inlet to the straight outlet.</summary>
    /// <param name="branchShare">Branch flow over inlet flow q, 0 to 1, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>K on the inlet's head, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Run(double branchShare, TeeBody body) => RunWithSlope(branchShare, body).Coefficient;

    /// <summary>Inlet to the straight outlet, and the slope.</summary>
    /// <param name="branchShare">Branch flow over inlet flow q, 0 to 1, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>K on the inlet's head and dK/dq, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Coefficient, double Slope) RunWithSlope(double branchShare, TeeBody body)
    {
        Require.Within(branchShare, 0, 1);
        var (coefficient, slope) = RunFedTeeShape.Run(body).Coefficient(1 - branchShare);
        return (coefficient, -slope);
    }

    /// <summary>Inlet to the branch.</summary>
    /// <param name="branchShare">Branch flow over inlet flow q, 0 to 1, dimensionless.</param>
    /// <param name="boreRatio">Branch bore over run bore, above 0, dimensionless.</param>
    /// <param name="edgeRadiusOverBranchBore">Radius of the branch's edge over branch bore, 0 (sharp) or more, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>K on the inlet's head, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Branch(double branchShare, double boreRatio, double edgeRadiusOverBranchBore, TeeBody body) =>
        BranchWithSlope(branchShare, boreRatio, edgeRadiusOverBranchBore, body).Coefficient;

    /// <summary>Inlet to the branch, and the slope.</summary>
    /// <param name="branchShare">Branch flow over inlet flow q, 0 to 1, dimensionless.</param>
    /// <param name="boreRatio">Branch bore over run bore, above 0, dimensionless.</param>
    /// <param name="edgeRadiusOverBranchBore">Radius of the branch's edge over branch bore, 0 (sharp) or more, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>K on the inlet's head and dK/dq, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Coefficient, double Slope) BranchWithSlope(double branchShare, double boreRatio, double edgeRadiusOverBranchBore, TeeBody body)
    {
        Require.Within(branchShare, 0, 1);
        return RunFedTeeShape.Branch(boreRatio, edgeRadiusOverBranchBore, body).Coefficient(branchShare);
    }
}
