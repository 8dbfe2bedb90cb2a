namespace FlowCalc.Layouts;

/// <summary>Pressure of the air over height.</summary>
public static class StandardAtmosphere
{
    /// <summary>The pressure at an altitude as a part of that at the sea.</summary>
    /// <param name="altitude">Altitude over the sea, m, -500 to 9 000; the law holds to 11 000.</param>
    /// <returns>p/p₀ = (1 − 2.25577·10⁻⁵·z)^5.25588, dimensionless.</returns>
    /// <remarks>Source: ISO 2533, standard atmosphere, lapse rate of 6.5 K/km (from memory).</remarks>
    public static double PartAt(double altitude) => Math.Pow(1 - 2.25577e-5 * altitude, 5.25588);
}
