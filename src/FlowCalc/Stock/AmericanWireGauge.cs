namespace FlowCalc.Stock;

/// <summary>American wire gauge of solid round wire.</summary>
/// <remarks>Source: ASTM B258 (from memory): No. 36 is 0.005 in and No. 0000 is 0.46 in thick, the 39 steps between in a geometric row.</remarks>
public static class AmericanWireGauge
{
    /// <summary>The thickest and the thinnest gauge that are answered.</summary>
    public const int Thickest = 0, Thinnest = 40;

    /// <summary>Resistivity of annealed copper at 20 °C, Ω·m: IEC 60028 (from memory), 1/58 Ω·mm²/m.</summary>
    public const double CopperResistivity = 1.7241e-8;

    /// <summary>Diameter of a gauge, m.</summary>
    /// <param name="gauge">Gauge, 0 to 40.</param>
    /// <returns>0.127 mm · 92^((36 − n)/39).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is outside its range.</exception>
    public static double Diameter(int gauge)
    {
        if (gauge is < Thickest or > Thinnest) throw new ArgumentOutOfRangeException(nameof(gauge), gauge, "Range: 0 to 40.");
        return 0.127e-3 * Math.Pow(92, (36 - gauge) / 39.0);
    }

    /// <summary>Cross-section of a gauge, m².</summary>
    /// <param name="gauge">Gauge, 0 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is outside its range.</exception>
    public static double Area(int gauge) => Math.PI / 4 * Diameter(gauge) * Diameter(gauge);

    /// <summary>Resistance of a gauge of solid annealed copper at 20 °C, Ω/m.</summary>
    /// <param name="gauge">Gauge, 0 to 40.</param>
    /// <exception cref="ArgumentOutOfRangeException">The gauge is outside its range.</exception>
    public static double OhmsPerMetre(int gauge) => CopperResistivity / Area(gauge);
}
