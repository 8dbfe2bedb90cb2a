namespace FlowCalc.Losses;

/// <summary>Loss of a sudden change of bore, on the velocity head in the smaller bore.</summary>
public static class BoreChange
{
    /// <summary>Sharp-edged sudden contraction.</summary>
    /// <param name="boreRatio">Smaller over larger bore b, 0 (a vessel) to 1, dimensionless.</param>
    /// <returns>K on the head in the smaller bore, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="boreRatio"/> is outside its range, or is NaN.</exception>
    /// <remarks>
    /// K = 0.0696 (1 − b⁵) λ² + (λ − 1)², λ = 1 + 0.622 (1 − 0.215 b² − 0.785 b⁵). Other handbooks spread by ±25 % up to b² = 0.5; this is the upper end there.
    /// Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 10 (form seen in the open library fluids).
    /// </remarks>
    public static double SharpContraction(double boreRatio)
    {
        Require.Within(boreRatio, 0, 1);
        var square = boreRatio * boreRatio;
        var fifth = square * square * boreRatio;
        var jet = 1 + 0.622 * (1 - 0.215 * square - 0.785 * fifth);
        return 0.0696 * (1 - fifth) * jet * jet + (jet - 1) * (jet - 1);
    }

    /// <summary>Sudden expansion.</summary>
    /// <param name="boreRatio">Smaller over larger bore b, 0 (a vessel) to 1, dimensionless.</param>
    /// <returns>K = (1 − b²)² on the head in the smaller bore, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="boreRatio"/> is outside its range, or is NaN.</exception>
    /// <remarks>Source: Borda (1766) and Carnot (1803): the momentum balance with the upstream pressure on the step's face, for turbulent flow.</remarks>
    public static double Expansion(double boreRatio)
    {
        Require.Within(boreRatio, 0, 1);
        var rest = 1 - boreRatio * boreRatio;
        return rest * rest;
    }
}
