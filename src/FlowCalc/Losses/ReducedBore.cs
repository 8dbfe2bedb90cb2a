using System.Collections.Immutable;

namespace FlowCalc.Losses;

/// <summary>Loss of a fitting whose bore is tighter than the tube on both sides of it.</summary>
/// <remarks>
/// Two bores long or more: the sharp contraction (Rennels and Hudson 2012), the friction of the fitting's length, and the sudden expansion (Borda–Carnot).
/// Shorter: the jet has no room to fill the bore, so the thick orifice of Idelchik, K_d = 0.5 (1 − b²)^0.75 + τ (1 − b²)^1.375 + (1 − b²)² + f l/d,
/// with τ between the table's points in straight lines. Both on the head in the fitting's bore; divided by b⁴ for the head in the tube.
/// Source: I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., ch. 4, thick-edged orifice (from memory). The two forms are of different authors and
/// where they meet, at two bores, K differs by the spread between them: within 9 % for b of 0.4 to 0.8, by 0.08 at b = 0.9. ±30 %.
/// </remarks>
public static class ReducedBore
{
    private const double LongFrom = 2;

    private static readonly ImmutableArray<(double LengthOverBore, double Tau)> JetRecovery =
        [(0, 1.35), (0.2, 1.22), (0.4, 1.10), (0.6, 0.84), (0.8, 0.42), (1, 0.24), (1.2, 0.16), (1.6, 0.07), (2, 0.02)];

    /// <summary>Loss of a fitting of tighter bore.</summary>
    /// <param name="boreRatio">Fitting bore over tube bore b, above 0 to 1, dimensionless.</param>
    /// <param name="lengthOverBore">Length of the tight bore over the fitting's bore, 0 or more, dimensionless.</param>
    /// <returns>
    /// The loss on the head in the tube. Its friction factor is that of the fitting's own bore: Reynolds number of the tube divided by b, relative roughness divided by b.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static ReducedBoreLoss Loss(double boreRatio, double lengthOverBore)
    {
        Require.Within(boreRatio, double.Epsilon, 1);
        Require.FiniteAndNotNegative(lengthOverBore);
        var square = boreRatio * boreRatio;
        var toTube = 1 / (square * square);
        var own = IsLong(lengthOverBore)
            ? BoreChange.SharpContraction(boreRatio) + BoreChange.Expansion(boreRatio)
            : ThickOrifice(1 - square, lengthOverBore);
        return new ReducedBoreLoss(own * toTube, lengthOverBore * toTube);
    }

    /// <summary>Whether a tight bore is long enough for contraction, friction and expansion in turn.</summary>
    internal static bool IsLong(double lengthOverBore) => lengthOverBore >= LongFrom;

    /// <summary>Loss coefficient of a short tight bore on the head in it, (1 − b²) given.</summary>
    internal static double ThickOrifice(double areaLeft, double lengthOverBore) =>
        0.5 * Math.Pow(areaLeft, 0.75) + Tau(lengthOverBore) * Math.Pow(areaLeft, 1.375) + areaLeft * areaLeft;

    /// <summary>Factor τ of a short tight bore.</summary>
    internal static double Tau(double lengthOverBore)
    {
        var ((fromLength, fromTau), (toLength, toTau)) = TauBetween(lengthOverBore);
        return fromTau + (toTau - fromTau) * (lengthOverBore - fromLength) / (toLength - fromLength);
    }

    /// <summary>The points of the table on either side of a length.</summary>
    internal static ((double LengthOverBore, double Tau) Below, (double LengthOverBore, double Tau) Above) TauBetween(double lengthOverBore)
    {
        var upper = 1;
        while (lengthOverBore > JetRecovery[upper].LengthOverBore)
            upper++;
        return (JetRecovery[upper - 1], JetRecovery[upper]);
    }
}
