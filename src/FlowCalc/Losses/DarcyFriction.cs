namespace FlowCalc.Losses;

/// <summary>Darcy friction factor of a straight round tube in every state of flow, with its slope.</summary>
/// <remarks>
/// Laminar (Re ≤ 2000): f = 64/Re, exact (Hagen 1839, Poiseuille 1840). Turbulent (Re ≥ 4000): Colebrook (1939), solved exactly.
/// Between them a cubic in Re that takes over value and slope at both ends: a modelling choice, since flow there is intermittent. Inside that
/// stretch f itself falls, rises and falls again; what rises throughout is f·Re², the pressure drop. The Darcy factor is four times the Fanning factor.
/// Colebrook's data reach Re 1e8 and relative roughness 0.05 (see <see cref="IsInRange"/>); beyond them the same equation is used.
/// </remarks>
public static class DarcyFriction
{
    /// <summary>Reynolds number up to which the flow is taken as laminar, dimensionless.</summary>
    public const double LaminarLimit = 2000;

    /// <summary>Reynolds number from which the flow is taken as fully turbulent, dimensionless.</summary>
    public const double TurbulentLimit = 4000;

    /// <summary>State of the flow at a Reynolds number.</summary>
    /// <param name="reynolds">Reynolds number, finite; only its size counts, so reverse flow may be negative; dimensionless.</param>
    /// <returns>The state.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reynolds"/> is not finite.</exception>
    public static FlowRegime Regime(double reynolds)
    {
        Require.Finite(reynolds);
        return Math.Abs(reynolds) switch
        {
            0 => FlowRegime.AtRest,
            <= LaminarLimit => FlowRegime.Laminar,
            < TurbulentLimit => FlowRegime.Transition,
            _ => FlowRegime.Turbulent,
        };
    }

    /// <summary>Whether the friction factor rests on data: laminar, or inside what Colebrook's equation was fitted to; never in the transition.</summary>
    /// <param name="reynolds">Reynolds number, any, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, any, dimensionless.</param>
    /// <returns>True for Re of at most 2000, or 4000 to 1e8, with a relative roughness of 0 to 0.05.</returns>
    public static bool IsInRange(double reynolds, double relativeRoughness) =>
        relativeRoughness is >= 0 and <= 0.05 && Math.Abs(reynolds) is <= LaminarLimit or (>= TurbulentLimit and <= 1e8);

    /// <summary>Darcy friction factor in any state of flow.</summary>
    /// <param name="reynolds">Reynolds number, above 0, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <returns>Darcy friction factor, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Factor(double reynolds, double relativeRoughness) => FactorWithSlope(reynolds, relativeRoughness).Factor;

    /// <summary>Darcy friction factor in any state of flow, and its slope.</summary>
    /// <param name="reynolds">Reynolds number, above 0, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <returns>Darcy friction factor and its derivative by the Reynolds number, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Factor, double Slope) FactorWithSlope(double reynolds, double relativeRoughness)
    {
        Require.FiniteAndPositive(reynolds);
        Require.Within(relativeRoughness, 0, 1);
        return reynolds switch
        {
            <= LaminarLimit => (64 / reynolds, -64 / (reynolds * reynolds)),
            < TurbulentLimit => Transition(reynolds, relativeRoughness),
            _ => Colebrook.Solve(reynolds, relativeRoughness),
        };
    }

    /// <summary>Darcy friction factor of laminar flow, 64/Re.</summary>
    /// <param name="reynolds">Reynolds number, above 0 to 2000, dimensionless.</param>
    /// <returns>Darcy friction factor, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="reynolds"/> is outside its range, or is NaN.</exception>
    public static double Laminar(double reynolds)
    {
        Require.Within(reynolds, double.Epsilon, LaminarLimit);
        return 64 / reynolds;
    }

    /// <summary>Darcy friction factor of turbulent flow, Colebrook and White.</summary>
    /// <param name="reynolds">Reynolds number, 4000 or more, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1 (data: to 0.05), dimensionless.</param>
    /// <returns>Darcy friction factor, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Turbulent(double reynolds, double relativeRoughness) => TurbulentWithSlope(reynolds, relativeRoughness).Factor;

    /// <summary>Darcy friction factor of turbulent flow, Colebrook and White, and its slope.</summary>
    /// <param name="reynolds">Reynolds number, 4000 or more, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1 (data: to 0.05), dimensionless.</param>
    /// <returns>Darcy friction factor and its derivative by the Reynolds number, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Factor, double Slope) TurbulentWithSlope(double reynolds, double relativeRoughness)
    {
        Require.Within(reynolds, TurbulentLimit, double.MaxValue);
        Require.Within(relativeRoughness, 0, 1);
        return Colebrook.Solve(reynolds, relativeRoughness);
    }

    /// <summary>The pressure group Φ = f·Re·|Re| and its slope: finite at rest, rising throughout, and odd in Re.</summary>
    /// <param name="reynolds">Reynolds number, finite, negative for reverse flow, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <returns>Φ and dΦ/dRe = 2 f |Re| + Re² f′ (64 in laminar flow and at rest), dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    /// <remarks>The pressure lost in a tube is Δp = L μ²/(2 ρ D³) · Φ, which needs no special care as the flow comes to rest.</remarks>
    public static (double Group, double Slope) PressureGroup(double reynolds, double relativeRoughness)
    {
        Require.Finite(reynolds);
        Require.Within(relativeRoughness, 0, 1);
        var size = Math.Abs(reynolds);
        if (size <= LaminarLimit)
            return (64 * reynolds, 64);

        var (factor, slope) = size < TurbulentLimit ? Transition(size, relativeRoughness) : Colebrook.Solve(size, relativeRoughness);
        return (factor * reynolds * size, size * (2 * factor + size * slope));
    }

    // Cubic Hermite in Re between the laminar and the turbulent end.
    private static (double Factor, double Slope) Transition(double reynolds, double relativeRoughness)
    {
        const double span = TurbulentLimit - LaminarLimit;
        const double start = 64 / LaminarLimit;
        const double startRise = -start / LaminarLimit * span;
        var (end, endSlope) = Colebrook.Solve(TurbulentLimit, relativeRoughness);
        var endRise = endSlope * span;

        // Written as start + t (startRise + t (b + t c)), whose values and slopes at t = 0 and 1 are those of the two ends.
        var t = (reynolds - LaminarLimit) / span;
        var b = 3 * (end - start) - 2 * startRise - endRise;
        var c = startRise + endRise - 2 * (end - start);
        var factor = start + t * (startRise + t * (b + t * c));
        var slope = (startRise + t * (2 * b + t * 3 * c)) / span;
        return (factor, slope);
    }
}
