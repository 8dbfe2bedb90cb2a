namespace FlowCalc.Losses;

/// <summary>Discharge coefficient of a sharp-edged hole two to ten diameters long, flowing full.</summary>
/// <remarks>
/// 1/Cd = 1/Cdu + (20/Re)(1 + 2.25 l) − 0.005 l/(1 + 7.5 (log10(0.00015 Re))²), l = L/d, Cdu = 0.827 − 0.0085 l; Re of 10 to 2e4, and above it towards Cdu.
/// Re is taken on the ideal jet velocity √(2 Δp/ρ); the paper's basis was not to hand: on the actual velocity Cd differs by 4 % at Re 1e3 and not at 1e4.
/// Source: A. Lichtarowicz, R. K. Duggins and E. Markland, Discharge coefficients for incompressible non-cavitating flow through long orifices, J. Mech. Eng. Sci. 7 (1965) 210–219 (from memory).
/// It does not hold for a jet that has come off the wall: a hole that discharges to the room from above about 3 bar absolute may cavitate and fall towards 0.62.
/// </remarks>
public static class Lichtarowicz
{
    private const double Shortest = 2;
    private const double Longest = 10;
    private const double LeastReynolds = 10;

    /// <summary>Discharge coefficient.</summary>
    /// <param name="reynolds">Reynolds number of hole diameter and ideal jet velocity, 10 or more, dimensionless.</param>
    /// <param name="lengthOverDiameter">Length of the hole over its diameter, 2 to 10, dimensionless.</param>
    /// <returns>Cd, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double DischargeCoefficient(double reynolds, double lengthOverDiameter)
    {
        Require.Within(reynolds, LeastReynolds, double.MaxValue);
        var ultimate = UltimateDischargeCoefficient(lengthOverDiameter);
        var decade = Math.Log10(0.00015 * reynolds);
        return 1 / (1 / ultimate + 20 / reynolds * (1 + 2.25 * lengthOverDiameter) - 0.005 * lengthOverDiameter / (1 + 7.5 * decade * decade));
    }

    /// <summary>Discharge coefficient at high Reynolds number.</summary>
    /// <param name="lengthOverDiameter">Length of the hole over its diameter, 2 to 10, dimensionless.</param>
    /// <returns>Cdu = 0.827 − 0.0085 L/d, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="lengthOverDiameter"/> is outside its range, or is NaN.</exception>
    public static double UltimateDischargeCoefficient(double lengthOverDiameter)
    {
        Require.Within(lengthOverDiameter, Shortest, Longest);
        return 0.827 - 0.0085 * lengthOverDiameter;
    }
}
