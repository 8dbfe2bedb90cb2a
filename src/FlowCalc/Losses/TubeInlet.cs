namespace FlowCalc.Losses;

/// <summary>Loss at the mouth of a tube that draws from a vessel, such as a dip tube, on the velocity head in the tube.</summary>
public static class TubeInlet
{
    /// <summary>Square-cut end of ordinary small tube, or a sharp hole flush with the wall, dimensionless.</summary>
    /// <remarks>
    /// Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 9 (seen in the open library fluids); the classical value is 0.50. A free end counts as flush
    /// once its wall is thicker than a twentieth of the bore, which small tube always is.
    /// </remarks>
    public const double SquareCut = 0.57;

    /// <summary>Square-cut end that stands free in the liquid by half a bore or more, for any wall.</summary>
    /// <param name="wallOverBore">Wall thickness at the end over bore, 0 (a knife edge) or more, dimensionless.</param>
    /// <returns>K = 1.12 − 22 t + 216 t² + 80 t³ up to t = 0.05, then 0.57, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="wallOverBore"/> is outside its range, or is NaN.</exception>
    /// <remarks>Source: Rennels and Hudson 2012, ch. 9 (seen in the open library fluids). Idelchik's table runs 0.06 to 0.14 lower.</remarks>
    public static double Projecting(double wallOverBore)
    {
        Require.FiniteAndNotNegative(wallOverBore);
        return wallOverBore >= 0.05 ? SquareCut : 1.12 + wallOverBore * (-22 + wallOverBore * (216 + wallOverBore * 80));
    }

    /// <summary>End cut on the slant: an estimate.</summary>
    /// <param name="angle">Angle between the tube's axis and the plane of the cut, rad, above 0 to π/2 (square).</param>
    /// <returns>K = 0.57 + 0.3 cos + 0.2 cos²: 0.57 square, 0.88 at 45°, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="angle"/> is outside its range, or is NaN.</exception>
    /// <remarks>Source: Idelchik's form for a tube that meets a flush wall at a slant, on the base 0.57 (seen in the open library fluids). Its use for a free, slanted end is a judgement.</remarks>
    public static double Slanted(double angle)
    {
        Require.Within(angle, double.Epsilon, Math.PI / 2);
        var cosine = Math.Cos(angle);
        return SquareCut + cosine * (0.3 + 0.2 * cosine);
    }
}
