namespace FlowCalc.Losses;

/// <summary>Flow of a liquid through an orifice or a nozzle's openings, by their effective area Cd·A.</summary>
/// <remarks>
/// Q = Cd·A·√(2 Δp/ρ), Δp from the total pressure before the orifice to the pressure behind it; the outlet's velocity head is inside Cd.
/// Source: Torricelli (1643) with the discharge coefficient. Usual Cd: 0.61 thin and sharp, 0.80 to 0.82 a tube of 2 to 3 diameters, 0.95 to 0.98 rounded (from memory).
/// Against the static pressure at a wall tapping in the feed tube the same orifice shows a coefficient larger by 1/√(1 − Cd² b⁴), b its diameter over the tube's bore.
/// </remarks>
public static class Orifice
{
    /// <summary>Effective area of a number of equal round holes.</summary>
    /// <param name="diameter">Diameter of a hole, m, above 0.</param>
    /// <param name="dischargeCoefficient">Discharge coefficient Cd, above 0 to 1, dimensionless.</param>
    /// <param name="count">Number of holes, 1 or more.</param>
    /// <returns>Cd·A, m².</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static double EffectiveArea(double diameter, double dischargeCoefficient, int count = 1)
    {
        Require.FiniteAndPositive(diameter);
        Require.Within(dischargeCoefficient, double.Epsilon, 1);
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        return dischargeCoefficient * count * (Math.PI / 4 * diameter * diameter);
    }

    /// <summary>Volume flow, and its slope.</summary>
    /// <param name="pressureDrop">Total pressure before less pressure behind, Pa, finite; below 0 the flow is reversed.</param>
    /// <param name="density">Density of the liquid, kg/m³, above 0.</param>
    /// <param name="effectiveArea">Cd·A, m², above 0.</param>
    /// <returns>Volume flow, m³/s, and its derivative by the pressure drop, m³/(s·Pa): positive infinity at rest, so solve for the pressure there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double VolumeFlow, double Slope) VolumeFlow(double pressureDrop, double density, double effectiveArea)
    {
        Require.Finite(pressureDrop);
        Require.FiniteAndPositive(density);
        Require.FiniteAndPositive(effectiveArea);
        var flow = effectiveArea * Math.Sqrt(2 * Math.Abs(pressureDrop) / density);
        var slope = pressureDrop == 0 ? double.PositiveInfinity : flow / (2 * Math.Abs(pressureDrop));
        return (Math.CopySign(flow, pressureDrop), slope);
    }

    /// <summary>Pressure drop that a flow needs, and its slope.</summary>
    /// <param name="volumeFlow">Volume flow, m³/s, finite, negative for reverse flow.</param>
    /// <param name="density">Density of the liquid, kg/m³, above 0.</param>
    /// <param name="effectiveArea">Cd·A, m², above 0.</param>
    /// <returns>ρ Q|Q|/(2 (Cd·A)²), Pa, and its derivative by the volume flow, Pa·s/m³.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or is NaN.</exception>
    public static (double PressureDrop, double Slope) PressureDrop(double volumeFlow, double density, double effectiveArea)
    {
        Require.Finite(volumeFlow);
        Require.FiniteAndPositive(density);
        Require.FiniteAndPositive(effectiveArea);
        var slope = density * Math.Abs(volumeFlow) / (effectiveArea * effectiveArea);
        return (slope * volumeFlow / 2, slope);
    }
}
