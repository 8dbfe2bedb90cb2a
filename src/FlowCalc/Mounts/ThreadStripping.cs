namespace FlowCalc.Mounts;

/// <summary>The thread of a bolt in a tapped hole.</summary>
/// <remarks>
/// Metric profile: pitch diameter d2 = d − 0.64952·P, stress area As = π/4·(d − 0.93819·P)² (ISO 724 and ISO 898-1, definitions from memory). The thread of the hole shears on
/// half the surface of the pitch cylinder: on the safe side of π·d·(P/2 + 0.57735·(d − d2))/P = 0.875·π·d a length, the nominal area of the same shear by the full formula of
/// FED-STD-H28 and of E. M. Alexander (1977), from memory. Shear strength: 0.6 of the tensile strength.
/// </remarks>
public static class ThreadStripping
{
    /// <summary>Shear strength over tensile strength, dimensionless (common practice of machine design, from memory).</summary>
    public const double ShearOverTensile = 0.6;

    /// <summary>Pitch diameter of a coarse thread, m.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    public static double PitchDiameter(double diameter, double pitch) => diameter - 0.64952 * pitch;

    /// <summary>Nominal stress area, m².</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    public static double StressArea(double diameter, double pitch)
    {
        var mean = diameter - 0.93819 * pitch;
        return Math.PI / 4 * mean * mean;
    }

    /// <summary>Pull at which the thread of the hole strips, N.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="engagement">Length of full thread, m.</param>
    /// <param name="tensile">Tensile strength of the part with the hole, Pa.</param>
    public static double Load(double diameter, double pitch, double engagement, double tensile) =>
        Math.PI * PitchDiameter(diameter, pitch) / 2 * engagement * ShearOverTensile * tensile;

    /// <summary>Length of thread that bears a pull, m.</summary>
    /// <param name="diameter">Nominal diameter, m.</param>
    /// <param name="pitch">Pitch, m.</param>
    /// <param name="pull">The pull, N.</param>
    /// <param name="tensile">Tensile strength of the part with the hole, Pa.</param>
    public static double LengthFor(double diameter, double pitch, double pull, double tensile) => pull / Load(diameter, pitch, 1, tensile);
}
