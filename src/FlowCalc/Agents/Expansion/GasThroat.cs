namespace FlowCalc.Agents;

/// <summary>The throat of a nozzle that a gas runs through at constant entropy: where its speed is that of sound, or at the surroundings' pressure where that is higher.</summary>
internal static class GasThroat
{
    const int MostSteps = 30;

    // The flux is flat there: an error of this part in the density makes one of its square in the flux.
    const double Settled = 1e-5;

    // ρ/c²·d(h + c²/2)/dρ of air; the secant takes over after the first step.
    const double Fundamental = 1.2;

    /// <summary>Finds flux and throat.</summary>
    /// <param name="fluid">A gas.</param>
    /// <param name="enthalpy">Total enthalpy, J/kg.</param>
    /// <param name="entropy">Entropy, J/(kg·K).</param>
    /// <param name="temperature">Total temperature, K.</param>
    /// <param name="density">Total density, kg/m³.</param>
    /// <param name="ambient">Absolute pressure outside, Pa, below the total one.</param>
    /// <param name="hint">The answer nearby; this one's on return.</param>
    /// <param name="answer">Flux at discharge coefficient 1, kg/(m²·s), and pressure in the throat, Pa.</param>
    /// <returns>False where the search leaves the data.</returns>
    public static bool TryFind(Fluid fluid, double enthalpy, double entropy, double temperature, double density, double ambient, ref NozzleHint hint, out (double Flux, double Throat) answer)
    {
        answer = default;
        // Ideal gas of γ = 1.4 at the speed of sound.
        var (t, d) = hint.SonicDensity > 0 ? (hint.SonicTemperature * temperature, hint.SonicDensity * density) : (temperature / 1.2, 0.634 * density);
        double last = double.NaN, lastMiss = double.NaN;
        for (var i = 0; i < MostSteps; i++)
        {
            var at = fluid.At(t, d);
            // Back onto the entropy at this density; to the first order, which is all once the search has come near.
            var correction = (entropy - at.Entropy) * t / at.IsochoricHeatCapacity;
            if (!(Math.Abs(correction) < t)) return false;
            var work = enthalpy - at.Enthalpy - correction * (at.IsochoricHeatCapacity + at.PressurePerKelvin / d);
            var square = at.SpeedOfSound * at.SpeedOfSound * (1 + correction / t);
            var miss = work - 0.5 * square;
            if (!double.IsFinite(miss)) return false;
            var slope = double.IsNaN(last) || d == last ? -square * Fundamental / d : (miss - lastMiss) / (d - last);
            (last, lastMiss) = (d, miss);
            var step = Math.Clamp(-miss / slope, -0.3 * d, 0.3 * d);
            if (Math.Abs(step) < Settled * d && Math.Abs(correction) < Settled * t)
            {
                (hint.SonicTemperature, hint.SonicDensity) = ((t + correction) / temperature, d / density);
                var throat = at.Pressure + at.PressurePerKelvin * correction;
                if (throat >= ambient)
                {
                    answer = (d * Math.Sqrt(2 * work), throat);
                    return true;
                }
                return TryOutside(fluid, enthalpy, entropy, t, d, ambient, out answer);
            }
            t += correction + t * at.PressurePerKelvin / (d * d * at.IsochoricHeatCapacity) * step;
            d += step;
        }
        return false;
    }

    static bool TryOutside(Fluid fluid, double enthalpy, double entropy, double t, double d, double ambient, out (double Flux, double Throat) answer)
    {
        var work = enthalpy - OnePhase.AtEntropy(fluid, ambient, entropy, ref t, ref d);
        answer = (work > 0 ? d * Math.Sqrt(2 * work) : 0, ambient);
        return work > 0;
    }
}
