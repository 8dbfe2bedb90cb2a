namespace FlowCalc.Agents;

/// <summary>The reduced Helmholtz energy or a part of it, with derivatives by reduced density δ and inverse reduced temperature τ up to the second in each.</summary>
/// <param name="Value">α.</param>
/// <param name="ByDensity">∂α/∂δ.</param>
/// <param name="ByDensityTwice">∂²α/∂δ².</param>
/// <param name="ByTemperature">∂α/∂τ.</param>
/// <param name="ByBoth">∂²α/∂δ∂τ.</param>
/// <param name="ByDensityTwiceAndTemperature">∂³α/∂δ²∂τ.</param>
/// <param name="ByTemperatureTwice">∂²α/∂τ².</param>
/// <param name="ByDensityAndTemperatureTwice">∂³α/∂δ∂τ².</param>
/// <param name="ByBothTwice">∂⁴α/∂δ²∂τ².</param>
/// <remarks>Properties need six of them; all nine are what a piece of <see cref="HelmholtzSurface"/> is made from.</remarks>
internal readonly record struct HelmholtzDerivatives(
    double Value, double ByDensity, double ByDensityTwice,
    double ByTemperature, double ByBoth, double ByDensityTwiceAndTemperature,
    double ByTemperatureTwice, double ByDensityAndTemperatureTwice, double ByBothTwice)
{
    /// <summary>Sums part by part.</summary>
    public static HelmholtzDerivatives operator +(in HelmholtzDerivatives a, in HelmholtzDerivatives b) => new(
        a.Value + b.Value, a.ByDensity + b.ByDensity, a.ByDensityTwice + b.ByDensityTwice,
        a.ByTemperature + b.ByTemperature, a.ByBoth + b.ByBoth, a.ByDensityTwiceAndTemperature + b.ByDensityTwiceAndTemperature,
        a.ByTemperatureTwice + b.ByTemperatureTwice, a.ByDensityAndTemperatureTwice + b.ByDensityAndTemperatureTwice, a.ByBothTwice + b.ByBothTwice);

    /// <summary>A part of it.</summary>
    public static HelmholtzDerivatives operator *(double part, in HelmholtzDerivatives a) => new(
        part * a.Value, part * a.ByDensity, part * a.ByDensityTwice,
        part * a.ByTemperature, part * a.ByBoth, part * a.ByDensityTwiceAndTemperature,
        part * a.ByTemperatureTwice, part * a.ByDensityAndTemperatureTwice, part * a.ByBothTwice);

    /// <summary>Of a term f(δ)·g(τ), from the logarithmic slopes of f and g.</summary>
    /// <param name="value">The term.</param>
    /// <param name="density">δ.</param>
    /// <param name="p">δ·f'/f.</param>
    /// <param name="pp">δ²·f''/f.</param>
    /// <param name="temperature">τ.</param>
    /// <param name="q">τ·g'/g.</param>
    /// <param name="qq">τ²·g''/g.</param>
    public static HelmholtzDerivatives OfProduct(double value, double density, double p, double pp, double temperature, double q, double qq)
    {
        var (byDensity, byDensityTwice) = (value * p / density, value * pp / (density * density));
        var (byTemperature, byTemperatureTwice) = (q / temperature, qq / (temperature * temperature));
        return new(
            value, byDensity, byDensityTwice,
            value * byTemperature, byDensity * byTemperature, byDensityTwice * byTemperature,
            value * byTemperatureTwice, byDensity * byTemperatureTwice, byDensityTwice * byTemperatureTwice);
    }

    /// <summary>Of a term of τ alone.</summary>
    /// <param name="value">The term.</param>
    /// <param name="byTemperature">Its first derivative.</param>
    /// <param name="byTemperatureTwice">Its second derivative.</param>
    public static HelmholtzDerivatives OfTemperature(double value, double byTemperature, double byTemperatureTwice) =>
        new(value, 0, 0, byTemperature, 0, 0, byTemperatureTwice, 0, 0);
}
