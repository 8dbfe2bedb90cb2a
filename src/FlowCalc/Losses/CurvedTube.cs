namespace FlowCalc.Losses;

/// <summary>Darcy friction factor of laminar flow in a curved tube, White's form, with its slope.</summary>
/// <remarks>
/// f = (64/Re) / (1 − (1 − (11.6/De)^0.45)^(1/0.45)) for De above 11.6, else 64/Re, with the Dean number De = Re·√(D/(2 r)).
/// Meant for laminar flow (De of 11.6 to about 2000; curvature delays the transition to Re near 10 000 at r/D 5); it is evaluated above that as
/// well because a bend's loss blends it with the turbulent form, beside which it then vanishes.
/// Source: C. M. White, Streamline flow through curved pipes, Proc. R. Soc. Lond. A 123 (1929) 645–663 (from memory; the form as in the open library fluids).
/// </remarks>
public static class CurvedTube
{
    internal const double OnsetDean = 11.6;
    internal const double Exponent = 0.45;

    /// <summary>Dean number of a flow in a curved tube.</summary>
    /// <param name="reynolds">Reynolds number, 0 or more, dimensionless.</param>
    /// <param name="radiusOverBore">Centre-line radius over bore, 0.5 or more, dimensionless.</param>
    /// <returns>Re·√(D/(2 r)), dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double DeanNumber(double reynolds, double radiusOverBore)
    {
        Require.FiniteAndNotNegative(reynolds);
        Require.Within(radiusOverBore, 0.5, double.MaxValue);
        return reynolds / Math.Sqrt(2 * radiusOverBore);
    }

    /// <summary>Darcy friction factor of laminar flow in a curved tube.</summary>
    /// <param name="reynolds">Reynolds number, above 0, dimensionless.</param>
    /// <param name="radiusOverBore">Centre-line radius over bore, 0.5 or more, dimensionless.</param>
    /// <returns>Darcy friction factor, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Factor(double reynolds, double radiusOverBore) => FactorWithSlope(reynolds, radiusOverBore).Factor;

    /// <summary>Darcy friction factor of laminar flow in a curved tube, and its slope.</summary>
    /// <param name="reynolds">Reynolds number, above 0, dimensionless.</param>
    /// <param name="radiusOverBore">Centre-line radius over bore, 0.5 or more, dimensionless.</param>
    /// <returns>Darcy friction factor and its derivative by the Reynolds number, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Factor, double Slope) FactorWithSlope(double reynolds, double radiusOverBore)
    {
        Require.FiniteAndPositive(reynolds);
        Require.Within(radiusOverBore, 0.5, double.MaxValue);
        var (group, slope) = Group(reynolds, radiusOverBore);
        return (group / reynolds, (slope - group / reynolds) / reynolds);
    }

    /// <summary>f·Re and its derivative by Re: 64 and 0 at rest, so that a solver meets no division by zero.</summary>
    internal static (double Group, double Slope) Group(double reynolds, double radiusOverBore)
    {
        var dean = reynolds / Math.Sqrt(2 * radiusOverBore);
        if (dean <= OnsetDean)
            return (64, 0);

        var y = Math.Pow(OnsetDean / dean, Exponent);
        var rest = Math.Pow(1 - y, 1 / Exponent);
        var group = 64 / (1 - rest);
        // d(rest)/dRe = (1 − y)^(1/n − 1) · y/Re, which is 0 at the onset: the slope is continuous there.
        return (group, group / (1 - rest) * rest / (1 - y) * y / reynolds);
    }
}
