namespace FlowCalc.Mounts;

/// <summary>Statics of a strap over a cylinder, both legs straight to the plane that the cylinder lies on.</summary>
public static class StrapStatics
{
    /// <summary>Tension at the far end of a belt over the near end, dimensionless: e^(μθ).</summary>
    /// <param name="friction">Friction coefficient μ, dimensionless.</param>
    /// <param name="wrap">Arc θ, rad.</param>
    /// <remarks>Source: L. Euler (1769) and J. A. Eytelwein, the belt equation, from memory.</remarks>
    public static double TensionRatio(double friction, double wrap) => Math.Exp(friction * wrap);

    /// <summary>Sum of the pressing of a strap on the cylinder over the tension where it is tightened, dimensionless.</summary>
    /// <param name="friction">Friction coefficient, dimensionless.</param>
    /// <param name="wrap">Arc, rad.</param>
    /// <param name="isTightenedBothEnds">Whether the tension is the same all along.</param>
    /// <returns>θ; tightened at one end (1 − e^(−μθ))/μ, the integral of the belt equation.</returns>
    public static double Pressing(double friction, double wrap, bool isTightenedBothEnds) =>
        isTightenedBothEnds || friction * wrap < 1e-9 ? wrap : (1 - Math.Exp(-friction * wrap)) / friction;

    /// <summary>Force with which a strap presses the cylinder into the cradle over the tension where it is tightened, dimensionless.</summary>
    /// <param name="friction">Friction coefficient, dimensionless.</param>
    /// <param name="wrap">Arc, rad.</param>
    /// <param name="isTightenedBothEnds">Whether the tension is the same all along.</param>
    /// <returns>2·sin(θ/2) with the mean of both legs' tensions: 2 for half a turn at one tension.</returns>
    public static double Seating(double friction, double wrap, bool isTightenedBothEnds)
    {
        var legs = isTightenedBothEnds ? 2 : 1 + Math.Exp(-friction * wrap);
        return legs * Math.Sin(Math.Min(wrap, Math.PI) / 2);
    }

    /// <summary>Sideways force that lifts the cylinder out of the cradle over the force straight off it that does the same, dimensionless: 1/tan of half the cradle's arc.</summary>
    /// <param name="cradle">Arc of the cylinder in the cradle, rad, over 0 to π.</param>
    /// <remarks>
    /// Derived: without friction the cradle's reaction at its edge goes through the cylinder's axis, N·sin φ = H, and the strap holds N·cos φ = H/tan φ against it.
    /// </remarks>
    public static double Sideways(double cradle) => 1 / Math.Tan(cradle / 2);
}
