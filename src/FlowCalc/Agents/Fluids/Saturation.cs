namespace FlowCalc.Agents;

/// <summary>Equilibrium of liquid and vapour of a pure fluid: equal pressure and equal Gibbs energy, by Newton's method on both densities.</summary>
internal sealed class Saturation
{
    const int MostSteps = 60;

    readonly HelmholtzEquation equation;
    readonly SaturationGuess liquid, vapour;

    /// <summary>Makes the solver of a fluid.</summary>
    /// <param name="id">The fluid.</param>
    /// <param name="equation">Its equation.</param>
    public Saturation(string id, HelmholtzEquation equation) =>
        (this.equation, liquid, vapour) = (equation, SaturationGuess.Of(id, "liquid-density"), SaturationGuess.Of(id, "vapour-density"));

    /// <summary>The two phases at a temperature.</summary>
    /// <param name="temperature">Temperature, K, below the critical one.</param>
    /// <exception cref="ArgumentOutOfRangeException">No equilibrium was found: too near the critical point, or outside the equation.</exception>
    public SaturatedPoint At(double temperature)
    {
        var (l, v) = (liquid.At(temperature) * equation.MolarMass, vapour.At(temperature) * equation.MolarMass);
        for (var i = 0; i < MostSteps; i++)
        {
            var (a, b) = (equation.At(temperature, l), equation.At(temperature, v));
            // Unknowns ln ρ of both: g' = p' / ρ.
            var (gap, gibbs) = (a.Pressure - b.Pressure, a.Enthalpy - b.Enthalpy - temperature * (a.Entropy - b.Entropy));
            var (pl, pv) = (a.PressurePerDensity * l, b.PressurePerDensity * v);
            var (gl, gv) = (a.PressurePerDensity, b.PressurePerDensity);
            var determinant = -pl * gv + pv * gl;
            var stepL = (-gap * -gv + pv * -gibbs) / determinant;
            var stepV = (pl * -gibbs - gl * -gap) / determinant;
            var most = Math.Max(Math.Abs(stepL), Math.Abs(stepV));
            var part = most > 0.3 ? 0.3 / most : 1;
            (l, v) = (l * Math.Exp(part * stepL), v * Math.Exp(part * stepV));
            if (most > 1e-11) continue;
            (a, b) = (equation.At(temperature, l), equation.At(temperature, v));
            return new(temperature, b.Pressure, l, v, a.Enthalpy, b.Enthalpy, a.Entropy, b.Entropy);
        }
        throw new ArgumentOutOfRangeException(nameof(temperature), temperature, "No equilibrium of liquid and vapour was found.");
    }
}
