namespace FlowCalc.Agents;

/// <summary>The reduced Helmholtz energy or a part of it, with derivatives by reduced density δ and inverse reduced temperature τ.</summary>
/// <param name="Value">α.</param>
/// <param name="ByDensity">∂α/∂δ.</param>
/// <param name="ByDensityTwice">∂²α/∂δ².</param>
/// <param name="ByTemperature">∂α/∂τ.</param>
/// <param name="ByTemperatureTwice">∂²α/∂τ².</param>
/// <param name="ByBoth">∂²α/∂δ∂τ.</param>
internal readonly record struct HelmholtzDerivatives(
    double Value, double ByDensity, double ByDensityTwice, double ByTemperature, double ByTemperatureTwice, double ByBoth)
{
    /// <summary>Sums part by part.</summary>
    public static HelmholtzDerivatives operator +(in HelmholtzDerivatives a, in HelmholtzDerivatives b) => new(
        a.Value + b.Value, a.ByDensity + b.ByDensity, a.ByDensityTwice + b.ByDensityTwice,
        a.ByTemperature + b.ByTemperature, a.ByTemperatureTwice + b.ByTemperatureTwice, a.ByBoth + b.ByBoth);

    /// <summary>Of a term x·f(δ)·g(τ), from the logarithmic slopes of f and g.</summary>
    /// <param name="value">The term.</param>
    /// <param name="density">δ.</param>
    /// <param name="p">δ·f'/f.</param>
    /// <param name="pp">δ²·f''/f.</param>
    /// <param name="temperature">τ.</param>
    /// <param name="q">τ·g'/g.</param>
    /// <param name="qq">τ²·g''/g.</param>
    public static HelmholtzDerivatives OfProduct(double value, double density, double p, double pp, double temperature, double q, double qq) => new(
        value, value * p / density, value * pp / (density * density), value * q / temperature, value * qq / (temperature * temperature), value * p * q / (density * temperature));
}
