namespace FlowCalc.Losses;

/// <summary>Pressure waves in a tube full of liquid, and the rise when its flow is stopped.</summary>
public static class WaveSpeed
{
    /// <summary>Bulk modulus of water at 20 °C, Pa (from memory); within 10 % for solutions on water from 0 to 60 °C.</summary>
    public const double BulkModulusOfWater = 2.18e9;

    /// <summary>Speed of a pressure wave, Korteweg 1878: √(K/ρ) / √(1 + K·D / (E·t)).</summary>
    /// <param name="bulkModulus">Of the liquid, Pa, above 0.</param>
    /// <param name="density">Of the liquid, kg/m³, above 0.</param>
    /// <param name="bore">Inside diameter of the tube, m, above 0.</param>
    /// <param name="wall">Thickness of its wall, m, above 0; infinite for a rigid tube.</param>
    /// <param name="modulus">Young's modulus of the wall, Pa, above 0; infinite for a rigid tube.</param>
    /// <returns>Speed, m/s.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is not above 0, or is NaN.</exception>
    public static double Of(double bulkModulus, double density, double bore, double wall, double modulus)
    {
        Require.FiniteAndPositive(bulkModulus);
        Require.FiniteAndPositive(density);
        Require.FiniteAndPositive(bore);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wall);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(modulus);
        return Math.Sqrt(bulkModulus / density / (1 + bulkModulus / modulus * (bore / wall)));
    }

    /// <summary>Rise when the liquid is slowed down at once, Joukowsky 1898: ρ·c·Δu. A bound: a stop that takes its time gives less.</summary>
    /// <param name="density">Of the liquid, kg/m³, above 0.</param>
    /// <param name="waveSpeed">Speed of a pressure wave, m/s, above 0.</param>
    /// <param name="slowed">By how much the liquid is slowed down, m/s, 0 or more.</param>
    /// <returns>Pressure rise, Pa.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double Surge(double density, double waveSpeed, double slowed)
    {
        Require.FiniteAndPositive(density);
        Require.FiniteAndPositive(waveSpeed);
        Require.Finite(slowed);
        ArgumentOutOfRangeException.ThrowIfNegative(slowed);
        return density * waveSpeed * slowed;
    }
}
