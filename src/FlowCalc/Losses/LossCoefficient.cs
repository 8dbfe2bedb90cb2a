namespace FlowCalc.Losses;

/// <summary>A loss coefficient K: the total pressure lost over the velocity head at a named bore.</summary>
public static class LossCoefficient
{
    /// <summary>Total pressure lost.</summary>
    /// <param name="coefficient">K at the bore where the velocity is taken, finite, dimensionless.</param>
    /// <param name="density">Density of the liquid, kg/m³, above 0.</param>
    /// <param name="velocity">Mean velocity at that bore, m/s, finite, negative for reverse flow.</param>
    /// <returns>K·ρ·v|v|/2, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double PressureDrop(double coefficient, double density, double velocity)
    {
        Require.Finite(coefficient);
        Require.FiniteAndPositive(density);
        Require.Finite(velocity);
        return coefficient * density / 2 * velocity * Math.Abs(velocity);
    }

    /// <summary>The same loss on the velocity head at another bore.</summary>
    /// <param name="coefficient">K on the head at <paramref name="fromBore"/>, finite, dimensionless.</param>
    /// <param name="fromBore">Bore that the coefficient belongs to, m, above 0.</param>
    /// <param name="toBore">Bore that it shall belong to, m, above 0.</param>
    /// <returns>K·(toBore/fromBore)⁴, dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    /// <remarks>From continuity: the velocity head goes as the bore to the power −4.</remarks>
    public static double OnBore(double coefficient, double fromBore, double toBore)
    {
        Require.Finite(coefficient);
        Require.FiniteAndPositive(fromBore);
        Require.FiniteAndPositive(toBore);
        var areaRatio = toBore / fromBore * (toBore / fromBore);
        return coefficient * areaRatio * areaRatio;
    }
}
