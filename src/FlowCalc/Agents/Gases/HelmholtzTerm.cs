using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>One term of a fundamental equation.</summary>
internal abstract record HelmholtzTerm
{
    /// <summary>The term and its derivatives.</summary>
    /// <param name="density">Reduced density δ, over 0.</param>
    /// <param name="temperature">Inverse reduced temperature τ, over 0.</param>
    public abstract HelmholtzDerivatives At(double density, double temperature);

    /// <summary>Reads a row of <c>agents/fluid-terms.csv</c>.</summary>
    /// <exception cref="InvalidDataException">No such kind of term.</exception>
    public static HelmholtzTerm Of(CsvRow row)
    {
        var n = row.Number("n_coefficient");
        return row.Text("kind") switch
        {
            "ideal-offset" => new IdealPower(n, row.Number("temperature_power")),
            "ideal-power" => new IdealPower(n, row.Number("temperature_power")),
            "ideal-logarithm" => new IdealLogarithm(n),
            "ideal-oscillator" => new IdealOscillator(n, row.Number("temperature_power")),
            "residual-power" => new ResidualPower(n, row.Number("density_power"), row.Number("temperature_power"), row.Number("exponential_power")),
            "residual-fading" => new ResidualFading(
                n, row.Number("density_power"), row.Number("temperature_power"), row.Number("exponential_power"), row.Number("fading_power")),
            "residual-gaussian" => new ResidualGaussian(
                n, row.Number("density_power"), row.Number("temperature_power"),
                row.Number("eta_coefficient"), row.Number("beta_coefficient"), row.Number("gamma_coefficient"), row.Number("epsilon_coefficient")),
            var kind => throw new InvalidDataException($"'{kind}' is no kind of term."),
        };
    }
}

/// <summary>n·τ^t.</summary>
internal sealed record IdealPower(double N, double T) : HelmholtzTerm
{
    public override HelmholtzDerivatives At(double density, double temperature) =>
        HelmholtzDerivatives.OfProduct(N * Math.Pow(temperature, T), density, 0, 0, temperature, T, T * (T - 1));
}

/// <summary>n·ln τ.</summary>
internal sealed record IdealLogarithm(double N) : HelmholtzTerm
{
    public override HelmholtzDerivatives At(double density, double temperature) =>
        HelmholtzDerivatives.OfTemperature(N * Math.Log(temperature), N / temperature, -N / (temperature * temperature));
}

/// <summary>n·ln(1 − exp(−t·τ)): an oscillating bond (Planck, Einstein).</summary>
internal sealed record IdealOscillator(double N, double T) : HelmholtzTerm
{
    public override HelmholtzDerivatives At(double density, double temperature)
    {
        var fade = Math.Exp(-T * temperature);
        var rest = 1 - fade;
        return HelmholtzDerivatives.OfTemperature(N * Math.Log(rest), N * T * fade / rest, -N * T * T * fade / (rest * rest));
    }
}

/// <summary>n·δ^d·τ^t, times exp(−δ^l) where l is over 0.</summary>
internal sealed record ResidualPower(double N, double D, double T, double L) : HelmholtzTerm
{
    public override HelmholtzDerivatives At(double density, double temperature)
    {
        var power = L > 0 ? Math.Pow(density, L) : 0;
        var value = N * Math.Pow(density, D) * Math.Pow(temperature, T) * (L > 0 ? Math.Exp(-power) : 1);
        var p = D - L * power;
        return HelmholtzDerivatives.OfProduct(value, density, p, p * (p - 1) - L * L * power, temperature, T, T * (T - 1));
    }
}

/// <summary>n·δ^d·τ^t·exp(−δ^l)·exp(−τ^m), l and m over 0.</summary>
internal sealed record ResidualFading(double N, double D, double T, double L, double M) : HelmholtzTerm
{
    public override HelmholtzDerivatives At(double density, double temperature)
    {
        var (power, fade) = (Math.Pow(density, L), Math.Pow(temperature, M));
        var value = N * Math.Pow(density, D) * Math.Pow(temperature, T) * Math.Exp(-power - fade);
        var (p, q) = (D - L * power, T - M * fade);
        return HelmholtzDerivatives.OfProduct(value, density, p, p * (p - 1) - L * L * power, temperature, q, q * (q - 1) - M * M * fade);
    }
}

/// <summary>n·δ^d·τ^t·exp(−η(δ − ε)² − β(τ − γ)²).</summary>
internal sealed record ResidualGaussian(double N, double D, double T, double Eta, double Beta, double Gamma, double Epsilon) : HelmholtzTerm
{
    public override HelmholtzDerivatives At(double density, double temperature)
    {
        var (x, y) = (density - Epsilon, temperature - Gamma);
        var value = N * Math.Pow(density, D) * Math.Pow(temperature, T) * Math.Exp(-Eta * x * x - Beta * y * y);
        var p = D - 2 * Eta * density * x;
        var q = T - 2 * Beta * temperature * y;
        return HelmholtzDerivatives.OfProduct(
            value, density, p, p * (p - 1) - 2 * Eta * density * (2 * density - Epsilon), temperature, q, q * (q - 1) - 2 * Beta * temperature * (2 * temperature - Gamma));
    }
}
