namespace FlowCalc.Losses;

/// <summary>The K-factor of a nozzle, Q = K·√p for a liquid of 1000 kg/m³, in SI: m³/(s·√Pa).</summary>
/// <remarks>
/// The pressure is the total pressure at the nozzle above that of the room. Another liquid flows √(1000/ρ) times as much, which the effective area sees to.
/// In trade units 1 L/min/√bar is 5.270463e-8 m³/(s·√Pa).
/// </remarks>
public static class KFactor
{
    /// <summary>Density that a K-factor refers to, kg/m³.</summary>
    public const double ReferenceDensity = 1000;

    private const double CubicMetresPerSecondPerLitrePerMinute = 1e-3 / 60;
    private const double PascalsPerBar = 1e5;

    /// <summary>Effective area of the orifice that a K-factor stands for.</summary>
    /// <param name="kFactor">K-factor, m³/(s·√Pa) at 1000 kg/m³, above 0.</param>
    /// <returns>Cd·A = K·√500, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kFactor"/> is outside its range, or is NaN.</exception>
    public static double ToEffectiveArea(double kFactor)
    {
        Require.FiniteAndPositive(kFactor);
        return kFactor * Math.Sqrt(ReferenceDensity / 2);
    }

    /// <summary>K-factor of an orifice.</summary>
    /// <param name="effectiveArea">Cd·A, m², above 0.</param>
    /// <returns>K-factor, m³/(s·√Pa) at 1000 kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="effectiveArea"/> is outside its range, or is NaN.</exception>
    public static double FromEffectiveArea(double effectiveArea)
    {
        Require.FiniteAndPositive(effectiveArea);
        return effectiveArea / Math.Sqrt(ReferenceDensity / 2);
    }

    /// <summary>K-factor in SI from L/min at 1 bar.</summary>
    /// <param name="litresPerMinute">K-factor, L/min/√bar, above 0.</param>
    /// <returns>K-factor, m³/(s·√Pa) at 1000 kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="litresPerMinute"/> is outside its range, or is NaN.</exception>
    public static double FromLitresPerMinute(double litresPerMinute)
    {
        Require.FiniteAndPositive(litresPerMinute);
        return litresPerMinute * CubicMetresPerSecondPerLitrePerMinute / Math.Sqrt(PascalsPerBar);
    }

    /// <summary>K-factor in L/min at 1 bar from SI.</summary>
    /// <param name="kFactor">K-factor, m³/(s·√Pa) at 1000 kg/m³, above 0.</param>
    /// <returns>K-factor, L/min/√bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kFactor"/> is outside its range, or is NaN.</exception>
    public static double ToLitresPerMinute(double kFactor)
    {
        Require.FiniteAndPositive(kFactor);
        return kFactor / CubicMetresPerSecondPerLitrePerMinute * Math.Sqrt(PascalsPerBar);
    }
}
