namespace FlowCalc.Losses;

/// <summary>The equation of Colebrook and White, solved to the last digits; no range checks, for use inside the loss functions.</summary>
/// <remarks>
/// With x = 1/√f the equation is x + 2 log10(a) = 0, a = e/3.7 + 2.51 x/Re. Its left side rises and is concave in x, so Newton converges from
/// either side as long as a stays positive, which the start ensures (it is within a few per cent of the root).
/// Source: C. F. Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11 (1939) 133–156; start: P. K. Swamee and A. K. Jain, J. Hydraul. Div. ASCE 102 (1976) 657–664 (both from memory).
/// </remarks>
internal static class Colebrook
{
    // 2/ln 10: the derivative of 2 log10(a) is this over a.
    public const double TwoOverLnTen = 0.868588963806503655;

    // Newton doubles the digits each pass from two good ones: four reach the last digit, the rest are spare.
    private const int MostPasses = 12;

    /// <summary>Friction factor and its slope.</summary>
    /// <param name="reynolds">Reynolds number, about 100 or more, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <returns>The Darcy friction factor f and df/dRe, both dimensionless.</returns>
    public static (double Factor, double Slope) Solve(double reynolds, double relativeRoughness)
    {
        var wall = relativeRoughness / 3.7;
        var film = 2.51 / reynolds;
        var x = -2 * Math.Log10(wall + 5.74 / Math.Pow(reynolds, 0.9));
        for (var pass = 0; pass < MostPasses; pass++)
        {
            var a = wall + film * x;
            var step = (x + 2 * Math.Log10(a)) / (1 + TwoOverLnTen * film / a);
            x -= step;
            // The error left is about the square of this step.
            if (Math.Abs(step) <= 1e-9 * x)
                break;
        }

        // Implicit differentiation of the equation in x and Re.
        var share = TwoOverLnTen * film / (wall + film * x);
        var slopeOfX = share * x / reynolds / (1 + share);
        var factor = 1 / (x * x);
        return (factor, -2 * factor / x * slopeOfX);
    }
}
