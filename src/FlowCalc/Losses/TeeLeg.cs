namespace FlowCalc.Losses;

/// <summary>Loss of total pressure from a tee's inlet to one outlet, as a polynomial in the two flows.</summary>
/// <param name="Own">Factor of m|m|, m the outlet's flow, dimensionless.</param>
/// <param name="Mixed">Factor of m·m_in, dimensionless.</param>
/// <param name="Inlet">Factor of m_in|m_in|, dimensionless.</param>
/// <param name="Eighth">Factor of m²·(m/m_in)⁶, dimensionless.</param>
/// <remarks>
/// Δp = R·(Own·m|m| + Mixed·m·m_in + Inlet·m_in|m_in| + Eighth·m²·(m/m_in)⁶) with R = 1/(2 ρ A²), A the inlet's bore area, when m is a mass flow
/// (ρ/(2 A²) when it is a volume flow). With w = m/m_in this is K(w) = Own·w² + Mixed·w + Inlet + Eighth·w⁸ on the inlet's velocity head.
/// </remarks>
public readonly record struct TeeLeg(double Own, double Mixed, double Inlet, double Eighth)
{
    /// <summary>Loss coefficient and its slope for an outlet's share of the inlet's flow.</summary>
    /// <param name="share">Flow to this outlet over flow at the inlet, 0 to 1, dimensionless.</param>
    /// <returns>K on the inlet's velocity head and dK/d(share), dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="share"/> is outside its range, or is NaN.</exception>
    public (double Coefficient, double Slope) Coefficient(double share)
    {
        Require.Within(share, 0, 1);
        var sixth = SixthPower(share);
        return (Inlet + share * (Mixed + share * (Own + Eighth * sixth)), Mixed + share * (2 * Own + 8 * Eighth * sixth));
    }

    /// <summary>The bracket of the pressure loss and its two partial derivatives; multiply all three by R.</summary>
    /// <param name="own">Flow out of this outlet, finite, any unit.</param>
    /// <param name="inlet">Flow into the tee, finite, the same unit.</param>
    /// <returns>The bracket (flow squared), and its derivatives by the outlet's and by the inlet's flow (flow).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not finite.</exception>
    /// <remarks>
    /// A dividing tee has 0 ≤ own ≤ inlet. Outside it, where only a solver's trial steps go, the ratio in the last term is held at 1, which keeps
    /// the bracket continuous and finite; such a state is no answer.
    /// </remarks>
    public (double Loss, double ByOwn, double ByInlet) Loss(double own, double inlet)
    {
        Require.Finite(own);
        Require.Finite(inlet);
        var loss = Own * own * Math.Abs(own) + Mixed * own * inlet + Inlet * inlet * Math.Abs(inlet);
        var byOwn = 2 * Own * Math.Abs(own) + Mixed * inlet;
        var byInlet = Mixed * own + 2 * Inlet * Math.Abs(inlet);
        if (Eighth == 0 || own == 0)
            return (loss, byOwn, byInlet);

        if (Math.Abs(own) > Math.Abs(inlet))
            return (loss + Eighth * own * own, byOwn + 2 * Eighth * own, byInlet);

        var ratio = own / inlet;
        var last = Eighth * own * SixthPower(ratio);
        return (loss + last * own, byOwn + 8 * last, byInlet - 6 * last * ratio);
    }

    private static double SixthPower(double x) => x * x * x * (x * x * x);
}
