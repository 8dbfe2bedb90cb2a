namespace FlowCalc.Losses;

/// <summary>Loss of a 90° tee fed through its branch and dividing to both sides, on the inlet's velocity head.</summary>
/// <remarks>
/// K_i = 1 + k (V_i/V_c)², c the inlet (the branch), i the outlet; k = 0.3 smooth inside, 1.5 threaded.
/// Source: I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., diagram 7-29 (form seen in an open Modelica loss library, k from memory). Which k goes with which body follows from the limit
/// of one outlet shut, a sharp turn in equal bore: 1.3 meets the mitre's 1.20 and the smooth tee's 1.28 to 1.30, 2.5 the tables for threaded fittings (2.4 to 2.5).
/// A rounded edge would lose less; no form for it is used.
/// </remarks>
public static class BullheadTee
{
    /// <summary>Whether the correlation covers a tee: outlets no wider than the inlet.</summary>
    /// <param name="boreRatio">Outlet bore over inlet bore, any, dimensionless.</param>
    /// <returns>True within the correlation's geometry.</returns>
    public static bool IsInRange(double boreRatio) => boreRatio is > 0 and <= 1;

    /// <summary>Inlet to one outlet, as a polynomial for a solver.</summary>
    /// <param name="boreRatio">Outlet bore over inlet bore, above 0, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>The leg's polynomial on the inlet's head, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static TeeLeg Outlet(double boreRatio, TeeBody body)
    {
        Require.FiniteAndPositive(boreRatio);
        var areaRatio = boreRatio * boreRatio;
        return new TeeLeg(Factor(body) / (areaRatio * areaRatio), 0, 1, 0);
    }

    /// <summary>The factor k of a body.</summary>
    internal static double Factor(TeeBody body) => body switch
    {
        TeeBody.Smooth => 0.3,
        TeeBody.Threaded => 1.5,
        _ => throw new ArgumentOutOfRangeException(nameof(body), body, "Smooth or threaded."),
    };

    /// <summary>Loss coefficient from the inlet to one outlet.</summary>
    /// <param name="share">Flow to this outlet over inlet flow, 0 to 1, dimensionless.</param>
    /// <param name="boreRatio">Outlet bore over inlet bore, above 0, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>K on the inlet's head, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Coefficient(double share, double boreRatio, TeeBody body) => CoefficientWithSlope(share, boreRatio, body).Coefficient;

    /// <summary>Loss coefficient from the inlet to one outlet, and its slope.</summary>
    /// <param name="share">Flow to this outlet over inlet flow, 0 to 1, dimensionless.</param>
    /// <param name="boreRatio">Outlet bore over inlet bore, above 0, dimensionless.</param>
    /// <param name="body">How the tee is made.</param>
    /// <returns>K on the inlet's head and dK/d(share), dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Coefficient, double Slope) CoefficientWithSlope(double share, double boreRatio, TeeBody body) =>
        Outlet(boreRatio, body).Coefficient(share);
}
