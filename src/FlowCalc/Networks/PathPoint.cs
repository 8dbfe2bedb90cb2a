namespace FlowCalc.Networks;

/// <summary>State of a fluid on its path.</summary>
/// <param name="Potential">Ψ = ∫ρ dp / ρ0 from the surroundings, Pa.</param>
/// <param name="Work">∫dp/ρ from the surroundings, J/kg.</param>
/// <param name="Density">ρ, kg/m³.</param>
/// <param name="Quotient">p/ρ, J/kg.</param>
/// <param name="DensitySlope">d ln ρ / d ln p, dimensionless, over 0.</param>
internal readonly record struct PathPoint(double Potential, double Work, double Density, double Quotient, double DensitySlope)
{
    /// <summary>Square of the local choking flux, −dp/dv, kg²/(m⁴·s²).</summary>
    public double ChokingFluxSquared => Density * Density * Quotient / DensitySlope;

    /// <summary>The state a hair on, to the first order.</summary>
    /// <param name="step">How far, of ln p.</param>
    /// <param name="referenceDensity">Reference density ρ0 of the potential, kg/m³.</param>
    public PathPoint Moved(double step, double referenceDensity) => new(
        Potential + step * Density * Density * Quotient / referenceDensity, Work + step * Quotient, Density * (1 + step * DensitySlope), Quotient * (1 + step * (1 - DensitySlope)), DensitySlope);

    /// <summary>How far a potential is, of ln p, by Newton's method: a step of one at most.</summary>
    /// <param name="potential">Ψ, Pa.</param>
    /// <param name="referenceDensity">Reference density ρ0 of the potential, kg/m³.</param>
    public double StepTo(double potential, double referenceDensity) => Math.Clamp((potential - Potential) * referenceDensity / (Density * Density * Quotient), -1, 1);
}
