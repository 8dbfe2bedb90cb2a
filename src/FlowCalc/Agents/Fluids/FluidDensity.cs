namespace FlowCalc.Agents;

/// <summary>Density at a temperature and pressure, by Newton's method that stays on the side of its phase.</summary>
internal static class FluidDensity
{
    const int MostSteps = 100;

    /// <summary>The density.</summary>
    /// <param name="equation">The fluid.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure, Pa, over 0.</param>
    /// <param name="start">Density to start from, kg/m³, on the side of the phase sought.</param>
    /// <returns>kg/m³; NaN where the phase has no such state.</returns>
    public static double Of(IFluidEquation equation, double temperature, double pressure, double start)
    {
        var density = start;
        for (var i = 0; i < MostSteps; i++)
        {
            var at = equation.At(temperature, density);
            // Between the limits of stability pressure falls with density: no state there.
            if (!(at.PressurePerDensity > 0)) return double.NaN;
            var step = (pressure - at.Pressure) / at.PressurePerDensity;
            step = Math.Clamp(step, -0.3 * density, 0.3 * density);
            density += step;
            if (Math.Abs(step) < 1e-13 * density) return density;
        }
        return density;
    }
}
