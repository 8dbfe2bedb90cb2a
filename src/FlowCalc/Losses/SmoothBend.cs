namespace FlowCalc.Losses;

/// <summary>Loss of a smooth (formed) bend in round tube at any Reynolds number, with its slope; the friction of the arc is included.</summary>
/// <remarks>
/// Turbulent: K_t = f θ r/D + (0.10 + 2.4 f) s + 6.6 f (√s + s)/(r/D)^(4θ/π), s = sin(θ/2), θ in radians.
/// Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 15 (form seen in the documentation of the open library fluids).
/// f is Colebrook's at √(Re² + 500²), which leaves it alone in turbulent flow and keeps it finite at rest.
/// Laminar: K_l = f θ r/D with White's friction of a curved tube. Both together: K = (K_t⁸ + K_l⁸)^(1/8), a judgement of this project that
/// adds 0.3 % at Re 1e4 for r/D 3, 2.6 % for r/D 10, and nothing at 1e5; it keeps K falling and the pressure drop rising with the flow. About ±25 % below Re 4000.
/// The arc must not be counted again in the tube's length. The loss in the tube downstream is included, so two bends less than about ten bores
/// apart act on one another and no correction for that is made.
/// </remarks>
public static class SmoothBend
{
    // Keeps Colebrook's factor finite as the flow comes to rest.
    internal const double LeastReynolds = 500;

    /// <summary>The geometry's part of a bend's loss.</summary>
    /// <param name="angle">Angle turned, rad, 0 to π.</param>
    /// <param name="radiusOverBore">Centre-line radius over bore, 0.5 or more, dimensionless.</param>
    /// <returns>The shape, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static BendShape Shape(double angle, double radiusOverBore)
    {
        Require.Within(angle, 0, Math.PI);
        Require.Within(radiusOverBore, 0.5, double.MaxValue);
        var s = Math.Sin(angle / 2);
        var arc = angle * radiusOverBore;
        var swirl = 6.6 * (Math.Sqrt(s) + s) / Math.Pow(radiusOverBore, 4 * angle / Math.PI);
        return new BendShape(arc + 2.4 * s + swirl, 0.10 * s, arc, radiusOverBore);
    }

    /// <summary>Whether the correlation may be trusted for a bend: within its stated range, and not a tight return bend.</summary>
    /// <param name="angle">Angle turned, rad, any.</param>
    /// <param name="radiusOverBore">Centre-line radius over bore, any, dimensionless.</param>
    /// <returns>True for an angle above 0 to π with r/D of 0.5 or more, and 1.5 or more where the bend turns more than a right angle.</returns>
    /// <remarks>Against Ito (1960) the form is within 6 % at 90° and r/D 1.5 to 10, within 20 % elsewhere, but a third too low for 180° at r/D 1; the limit of 1.5 is a judgement from that.</remarks>
    public static bool IsInRange(double angle, double radiusOverBore) =>
        angle is > 0 and <= Math.PI && radiusOverBore >= (angle > Math.PI / 2 ? 1.5 : 0.5);

    /// <summary>Loss coefficient of a bend, the arc's friction included.</summary>
    /// <param name="reynolds">Reynolds number in the tube, above 0, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <param name="shape">The bend's shape.</param>
    /// <returns>K on the velocity head in the tube, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Coefficient(double reynolds, double relativeRoughness, BendShape shape) =>
        CoefficientWithSlope(reynolds, relativeRoughness, shape).Coefficient;

    /// <summary>Loss coefficient of a bend, the arc's friction included, and its slope.</summary>
    /// <param name="reynolds">Reynolds number in the tube, above 0, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <param name="shape">The bend's shape.</param>
    /// <returns>K on the velocity head in the tube and dK/dRe, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double Coefficient, double Slope) CoefficientWithSlope(double reynolds, double relativeRoughness, BendShape shape)
    {
        Require.FiniteAndPositive(reynolds);
        Require.Within(relativeRoughness, 0, 1);
        var (product, slope) = CoefficientTimesReynolds(reynolds, relativeRoughness, shape);
        var coefficient = product / reynolds;
        return (coefficient, (slope - coefficient) / reynolds);
    }

    /// <summary>The loss group K·Re·|Re| of a bend and its slope: finite at rest and odd in Re.</summary>
    /// <param name="reynolds">Reynolds number in the tube, finite, negative for reverse flow, dimensionless.</param>
    /// <param name="relativeRoughness">Roughness over bore, 0 to 1, dimensionless.</param>
    /// <param name="shape">The bend's shape.</param>
    /// <returns>K·Re·|Re| and its derivative by Re (64 times arc over bore at rest), dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    /// <remarks>The pressure lost is Δp = μ²/(2 ρ D²) times the group.</remarks>
    public static (double Group, double Slope) LossGroup(double reynolds, double relativeRoughness, BendShape shape)
    {
        Require.Finite(reynolds);
        Require.Within(relativeRoughness, 0, 1);
        var (product, slope) = CoefficientTimesReynolds(Math.Abs(reynolds), relativeRoughness, shape);
        return (product * reynolds, product + Math.Abs(reynolds) * slope);
    }

    /// <summary>Reynolds number at which the turbulent part takes its friction factor, dimensionless.</summary>
    internal static double Held(double reynolds) => Math.Sqrt(reynolds * reynolds + LeastReynolds * LeastReynolds);

    // K·Re and its slope: the quantity that stays finite both at rest and at any flow.
    private static (double Product, double Slope) CoefficientTimesReynolds(double reynolds, double relativeRoughness, BendShape shape)
    {
        if (shape.ArcOverBore == 0)
            return (0, 0); // no bend

        var held = Held(reynolds);
        var (factor, factorSlope) = Colebrook.Solve(held, relativeRoughness);
        var turbulentCoefficient = shape.PerFriction * factor + shape.Constant;
        var turbulent = turbulentCoefficient * reynolds;
        var turbulentSlope = turbulentCoefficient + shape.PerFriction * factorSlope * (reynolds / held) * reynolds;

        var (laminar, laminarSlope) = CurvedTube.Group(reynolds, shape.RadiusOverBore);
        laminar *= shape.ArcOverBore;
        laminarSlope *= shape.ArcOverBore;

        // Scaled by the larger, so that no eighth power overflows.
        var larger = Math.Max(turbulent, laminar);
        var both = larger * Math.Pow(EighthPower(turbulent / larger) + EighthPower(laminar / larger), 1.0 / 8);
        var slope = SeventhPower(turbulent / both) * turbulentSlope + SeventhPower(laminar / both) * laminarSlope;
        return (both, slope);
    }

    private static double EighthPower(double x)
    {
        var fourth = x * x * (x * x);
        return fourth * fourth;
    }

    private static double SeventhPower(double x) => x * x * x * (x * x) * (x * x);
}
