namespace FlowCalc.Losses;

/// <summary>The polynomials of a 90° tee fed through its run, for a solver.</summary>
/// <remarks>
/// Run: K_s = 0.62 w² − 0.98 w + 0.36 + 0.03 w⁸ with w = 1 − q. Branch: K_b = 0.81 q² − 1.13 q + 1 + (q²/β⁴)(1.12 β − 1.08 β³ + K93), with, for ρ = r/D_b,
/// K93 = 0.57 − 1.07 ρ^½ − 2.13 ρ + 8.24 ρ^1.5 − 8.48 ρ² + 2.90 ρ^2.5; q the branch's share, β = D_b/D_c, r the radius of the branch's edge; K on the inlet's head.
/// Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 16 (from memory; coefficients confirmed in an open Modelica library of thermal systems; the run's form is re-based here on outlet over
/// inlet flow). Within 0.16 of Gardel (1957), Vogel (1926–28) and Idelchik at equal bores.
/// Threaded: + 1.1 q² in the branch and + 0.87 (1 − q)² in the run, chosen to meet the tables for screwed tees of 1/2 in (2.40 and 0.90) in the HVAC Pump Handbook, McGraw-Hill 2006, table 3.10: a judgement.
/// β above 1: β = 1 and the sudden expansion (1 − 1/β²)² q² behind it, a judgement, since the form itself would fall below a plain expansion.
/// </remarks>
public static class RunFedTeeShape
{
    /// <summary>Inlet to the straight outlet.</summary>
    /// <param name="body">How the tee is made.</param>
    /// <returns>The leg's polynomial on the inlet's head, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="body"/> is no member of the enumeration.</exception>
    public static TeeLeg Run(TeeBody body) => new(0.62 + RunExtra(body), -0.98, 0.36, 0.03);

    /// <summary>Inlet to the branch.</summary>
    /// <param name="boreRatio">Branch bore over run bore β, above 0, dimensionless.</param>
    /// <param name="edgeRadiusOverBranchBore">Radius of the branch's edge over branch bore, 0 (sharp) or more; its effect ends at 1; dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>The leg's polynomial on the inlet's head, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static TeeLeg Branch(double boreRatio, double edgeRadiusOverBranchBore, TeeBody body)
    {
        Require.FiniteAndPositive(boreRatio);
        Require.FiniteAndNotNegative(edgeRadiusOverBranchBore);
        var beta = Math.Min(boreRatio, 1);
        var square = beta * beta;
        var own = 0.81 + (beta * (1.12 - 1.08 * square) + SharpEdge(edgeRadiusOverBranchBore)) / (square * square) + BranchExtra(body);
        if (boreRatio > 1)
            own += BoreChange.Expansion(1 / boreRatio);
        return new TeeLeg(own, -1.13, 1, 0);
    }

    /// <summary>What a body adds to the factor of the straight leg's share squared.</summary>
    internal static double RunExtra(TeeBody body) => Extra(body, 0.87);

    /// <summary>What a body adds to the factor of the branch's share squared.</summary>
    internal static double BranchExtra(TeeBody body) => Extra(body, 1.1);

    private static double Extra(TeeBody body, double threaded) => body switch
    {
        TeeBody.Smooth => 0,
        TeeBody.Threaded => threaded,
        _ => throw new ArgumentOutOfRangeException(nameof(body), body, "Smooth or threaded."),
    };

    // K93 of the source; it is flat at a ratio of 1 and would fall on beyond it, so it is held there.
    private static double SharpEdge(double ratio)
    {
        var root = Math.Sqrt(Math.Min(ratio, 1));
        return 0.57 + root * (-1.07 + root * (-2.13 + root * (8.24 + root * (-8.48 + root * 2.90))));
    }
}
