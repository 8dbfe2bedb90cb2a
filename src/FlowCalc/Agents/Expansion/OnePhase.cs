namespace FlowCalc.Agents;

/// <summary>One-phase states of a fluid from pressure and enthalpy or entropy, by Newton's method on temperature and density.</summary>
internal static class OnePhase
{
    const int MostSteps = 40;

    // Of a tenth of the temperature and of 0.3 of the density: what is left after that step is its square.
    const double Settled = 1e-4;

    /// <summary>State at a pressure and an enthalpy.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    /// <param name="enthalpy">Enthalpy, J/kg.</param>
    /// <param name="temperature">Temperature to start from, K; the answer on return.</param>
    /// <param name="density">Density to start from, kg/m³; the answer on return, NaN where there is none within the fluid's surface.</param>
    /// <returns>Its entropy, J/(kg·K).</returns>
    public static double AtEnthalpy(Fluid fluid, double pressure, double enthalpy, ref double temperature, ref double density) =>
        Find(fluid, pressure, enthalpy, isEnthalpy: true, ref temperature, ref density);

    /// <summary>State at a pressure and an entropy.</summary>
    /// <param name="fluid">The fluid.</param>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    /// <param name="entropy">Entropy, J/(kg·K).</param>
    /// <param name="temperature">Temperature to start from, K; the answer on return.</param>
    /// <param name="density">Density to start from, kg/m³; the answer on return, NaN where there is none within the fluid's surface.</param>
    /// <returns>Its enthalpy, J/kg.</returns>
    public static double AtEntropy(Fluid fluid, double pressure, double entropy, ref double temperature, ref double density) =>
        Find(fluid, pressure, entropy, isEnthalpy: false, ref temperature, ref density);

    static double Find(Fluid fluid, double pressure, double target, bool isEnthalpy, ref double temperature, ref double density)
    {
        for (var i = 0; i < MostSteps; i++)
        {
            var (t, d) = (temperature, density);
            var at = fluid.At(t, d);
            // d(h or s) by temperature and by density, from the state's own derivatives.
            var byTemperature = isEnthalpy ? at.IsochoricHeatCapacity + at.PressurePerKelvin / density : at.IsochoricHeatCapacity / temperature;
            var byDensity = isEnthalpy
                ? (at.PressurePerDensity - temperature * at.PressurePerKelvin / density) / density
                : -at.PressurePerKelvin / (density * density);
            var (missPressure, miss) = (pressure - at.Pressure, target - (isEnthalpy ? at.Enthalpy : at.Entropy));
            var determinant = at.PressurePerKelvin * byDensity - at.PressurePerDensity * byTemperature;
            var stepTemperature = (missPressure * byDensity - miss * at.PressurePerDensity) / determinant;
            var stepDensity = (miss * at.PressurePerKelvin - missPressure * byTemperature) / determinant;
            var most = Math.Max(Math.Abs(stepTemperature) / (0.1 * temperature), Math.Abs(stepDensity) / (0.3 * density));
            if (!(most < double.PositiveInfinity)) break;
            var part = most > 1 ? 1 / most : 1;
            temperature += part * stepTemperature;
            density += part * stepDensity;
            // dh = T·ds + dp/ρ over the last step.
            if (most < Settled) return isEnthalpy ? at.Entropy + (miss - missPressure / d) / t : at.Enthalpy + t * miss + missPressure / d;
        }
        density = double.NaN;
        return double.NaN;
    }
}
