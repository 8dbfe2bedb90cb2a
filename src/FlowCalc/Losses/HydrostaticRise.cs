namespace FlowCalc.Losses;

/// <summary>Pressure that a column of liquid takes on its way up, and gives back on its way down.</summary>
public static class HydrostaticRise
{
    /// <summary>Standard acceleration of free fall, m/s².</summary>
    /// <remarks>Source: 3rd General Conference on Weights and Measures, 1901.</remarks>
    public const double StandardGravity = 9.80665;

    /// <summary>Pressure from the lower to the upper end.</summary>
    /// <param name="density">Density of the liquid, kg/m³, above 0.</param>
    /// <param name="rise">Height gained against gravity along the flow, m, finite, negative downwards.</param>
    /// <returns>ρ g Δz with standard gravity, Pa; below 0 downwards.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double PressureDrop(double density, double rise)
    {
        Require.FiniteAndPositive(density);
        Require.Finite(rise);
        return density * StandardGravity * rise;
    }
}
