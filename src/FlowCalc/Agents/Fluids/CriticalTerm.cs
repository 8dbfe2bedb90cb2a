using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>n·Δ^b·δ·ψ, which shapes the neighbourhood of the critical point (Span, Wagner 1996, section 3): Δ = θ² + B((δ−1)²)^a, θ = (1−τ) + A((δ−1)²)^(1/(2β)), ψ = exp(−C(δ−1)² − D(τ−1)²).</summary>
internal sealed record CriticalTerm(double N, double SmallA, double SmallB, double Beta, double A, double B, double C, double D) : HelmholtzTerm
{
    // The derivatives are 0/0 at the critical density itself.
    const double Aside = 1e-8;

    // Step in τ of the third and fourth derivatives, which only a surface needs.
    const double Step = 1e-4;

    /// <summary>Reads a row of <c>agents/critical-terms.csv</c>.</summary>
    public static new CriticalTerm Of(CsvRow row) => new(
        row.Number("n_coefficient"), row.Number("a_coefficient"), row.Number("b_coefficient"), row.Number("beta_coefficient"),
        row.Number("large_a_coefficient"), row.Number("large_b_coefficient"), row.Number("large_c_coefficient"), row.Number("large_d_coefficient"));

    /// <remarks>Derivatives up to the second in all are analytic; those that <see cref="HelmholtzSurface"/> alone needs are differences in τ of these.</remarks>
    public override HelmholtzDerivatives At(double density, double temperature)
    {
        var delta = Math.Abs(density - 1) < Aside ? 1 + Aside : density;
        // The exponential leaves nothing of the term this far from the critical point.
        if (C * (delta - 1) * (delta - 1) + D * (temperature - 1) * (temperature - 1) > 700) return default;
        var at = Analytic(delta, temperature);
        var (low, high) = (Analytic(delta, temperature - Step), Analytic(delta, temperature + Step));
        return at with
        {
            ByDensityTwiceAndTemperature = (high.ByDensityTwice - low.ByDensityTwice) / (2 * Step),
            ByDensityAndTemperatureTwice = (high.ByBoth - low.ByBoth) / (2 * Step),
            ByBothTwice = (high.ByDensityTwice - 2 * at.ByDensityTwice + low.ByDensityTwice) / (Step * Step),
        };
    }

    HelmholtzDerivatives Analytic(double delta, double tau)
    {
        var (x, y) = (delta - 1, tau - 1);
        var square = x * x;
        var root = Math.Pow(square, 0.5 / Beta - 1);
        var power = Math.Pow(square, SmallA - 1);
        var theta = -y + A * root * square;
        var distance = theta * theta + B * power * square;
        var psi = Math.Exp(-C * square - D * y * y);
        var (psiX, psiXX) = (-2 * C * x * psi, (2 * C * square - 1) * 2 * C * psi);
        var (psiY, psiYY, psiXY) = (-2 * D * y * psi, (2 * D * y * y - 1) * 2 * D * psi, 4 * C * D * x * y * psi);

        var inner = A * theta * 2 / Beta * root + 2 * B * SmallA * power;
        var distanceX = x * inner;
        var distanceXX = inner + 4 * B * SmallA * (SmallA - 1) * power + 2 * A * A / (Beta * Beta) * root * root * square + A * theta * 4 / Beta * (0.5 / Beta - 1) * root;
        var (b0, b1, b2) = (Math.Pow(distance, SmallB), SmallB * Math.Pow(distance, SmallB - 1), SmallB * (SmallB - 1) * Math.Pow(distance, SmallB - 2));
        var (bX, bXX) = (b1 * distanceX, b1 * distanceXX + b2 * distanceX * distanceX);
        var (bY, bYY) = (-2 * theta * b1, 2 * b1 + 4 * theta * theta * b2);
        var bXY = -A * 2 / Beta * b1 * x * root - 2 * theta * b2 * distanceX;
        var (grown, grownX) = (psi + delta * psiX, 2 * psiX + delta * psiXX);
        return new(
            N * b0 * delta * psi,
            N * (b0 * grown + bX * delta * psi),
            N * (b0 * grownX + 2 * bX * grown + bXX * delta * psi),
            N * delta * (bY * psi + b0 * psiY),
            N * (b0 * (psiY + delta * psiXY) + delta * bX * psiY + bY * grown + bXY * delta * psi),
            0,
            N * delta * (bYY * psi + 2 * bY * psiY + b0 * psiYY),
            0, 0);
    }
}
