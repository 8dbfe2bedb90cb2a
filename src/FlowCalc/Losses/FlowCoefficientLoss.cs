namespace FlowCalc.Losses;

/// <summary>Loss of a valve, strainer or hose given by its flow coefficient Kv.</summary>
/// <remarks>
/// Kv is the flow of water of 1000 kg/m³ in m³/h at a loss of 1 bar (IEC 60534-1, from memory). Here it is in SI: m³/(s·√Pa) at 1000 kg/m³, so that
/// Δp = (ρ/1000)·(Q/Kv)². It is a turbulent figure: below a valve Reynolds number of about 1e4 it promises too much.
/// </remarks>
public static class FlowCoefficientLoss
{
    /// <summary>Kv in m³/h at 1 bar for one unit of the US coefficient Cv (US gal/min at 1 psi), dimensionless.</summary>
    /// <remarks>Source: IEC 60534-1 prints 0.865 (from memory); the exact conversion of the units with water at 60 °F gives 0.8649 to 0.8650.</remarks>
    public const double MetricPerUs = 0.865;

    /// <summary>Density that a flow coefficient refers to, kg/m³.</summary>
    public const double ReferenceDensity = 1000;

    private const double SecondsPerHour = 3600;
    private const double PascalsPerBar = 1e5;

    /// <summary>Kv in SI from Kv in m³/h at 1 bar.</summary>
    /// <param name="cubicMetresPerHour">Kv, m³/h at 1 bar, above 0.</param>
    /// <returns>Kv, m³/(s·√Pa) at 1000 kg/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cubicMetresPerHour"/> is outside its range, or is NaN.</exception>
    public static double FromCubicMetresPerHour(double cubicMetresPerHour)
    {
        Require.FiniteAndPositive(cubicMetresPerHour);
        return cubicMetresPerHour / (SecondsPerHour * Math.Sqrt(PascalsPerBar));
    }

    /// <summary>Kv in m³/h at 1 bar from Kv in SI.</summary>
    /// <param name="flowCoefficient">Kv, m³/(s·√Pa) at 1000 kg/m³, above 0.</param>
    /// <returns>Kv, m³/h at 1 bar.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="flowCoefficient"/> is outside its range, or is NaN.</exception>
    public static double ToCubicMetresPerHour(double flowCoefficient)
    {
        Require.FiniteAndPositive(flowCoefficient);
        return flowCoefficient * (SecondsPerHour * Math.Sqrt(PascalsPerBar));
    }

    /// <summary>Total pressure lost, and its slope.</summary>
    /// <param name="volumeFlow">Volume flow, m³/s, finite, negative for reverse flow.</param>
    /// <param name="density">Density of the liquid, kg/m³, above 0.</param>
    /// <param name="flowCoefficient">Kv, m³/(s·√Pa) at 1000 kg/m³, above 0.</param>
    /// <returns>Loss, Pa, with the sign of the flow, and its derivative by the volume flow, Pa·s/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double PressureDrop, double Slope) PressureDrop(double volumeFlow, double density, double flowCoefficient)
    {
        Require.Finite(volumeFlow);
        Require.FiniteAndPositive(density);
        Require.FiniteAndPositive(flowCoefficient);
        var perFlow = density / ReferenceDensity * Math.Abs(volumeFlow) / (flowCoefficient * flowCoefficient);
        return (perFlow * volumeFlow, 2 * perFlow);
    }

    /// <summary>The same loss as a coefficient on the velocity head at a bore.</summary>
    /// <param name="flowCoefficient">Kv, m³/(s·√Pa) at 1000 kg/m³, above 0.</param>
    /// <param name="bore">Bore, m, above 0.</param>
    /// <returns>K = 2 A²/(1000 Kv²), dimensionless.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double EquivalentCoefficient(double flowCoefficient, double bore)
    {
        Require.FiniteAndPositive(flowCoefficient);
        Require.FiniteAndPositive(bore);
        var ratio = Math.PI / 4 * bore * bore / flowCoefficient;
        return 2 / ReferenceDensity * ratio * ratio;
    }
}
