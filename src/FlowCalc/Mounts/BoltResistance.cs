namespace FlowCalc.Mounts;

/// <summary>What a bolt and the sheet under it bear.</summary>
/// <remarks>
/// Source: EN 1993-1-8:2005, table 3.4, with the partial factor 1.25 (seen second-hand). The standard is for structures of bolts from about M12; it is used here as an open
/// method for smaller ones, and nothing in it is an approval.
/// </remarks>
public static class BoltResistance
{
    /// <summary>Partial factor γM2 of joints, dimensionless.</summary>
    public const double PartialFactor = 1.25;

    /// <summary>Shear that a bolt bears with its thread in the shear plane, N.</summary>
    /// <param name="shearCoefficient">αv: 0.6 for 4.6, 5.6 and 8.8, 0.5 for 4.8, 5.8, 6.8 and 10.9.</param>
    /// <param name="tensile">Tensile strength of the bolt, Pa.</param>
    /// <param name="stressArea">Stress area, m².</param>
    public static double Shear(double shearCoefficient, double tensile, double stressArea) => shearCoefficient * tensile * stressArea / PartialFactor;

    /// <summary>Pull that a bolt bears, N.</summary>
    /// <param name="tensile">Tensile strength of the bolt, Pa.</param>
    /// <param name="stressArea">Stress area, m².</param>
    /// <param name="isCountersunk">Whether its head is countersunk: 0.63 for 0.9.</param>
    public static double Tension(double tensile, double stressArea, bool isCountersunk) => (isCountersunk ? 0.63 : 0.9) * tensile * stressArea / PartialFactor;

    /// <summary>Use of a bolt by shear and pull together, dimensionless: the worse of Fv/FvRd + Ft/(1.4·FtRd) and Ft/FtRd.</summary>
    /// <param name="shear">Shear over what it bears.</param>
    /// <param name="pull">Pull over what it bears.</param>
    public static double Together(double shear, double pull) => Math.Max(shear + pull / 1.4, pull);

    /// <summary>Pull at which the head, nut or washer punches through a sheet, N.</summary>
    /// <param name="bearingDiameter">Mean diameter of what bears on the sheet, m.</param>
    /// <param name="thickness">Thickness of the sheet, m.</param>
    /// <param name="tensile">Tensile strength of the sheet, Pa.</param>
    public static double PullThrough(double bearingDiameter, double thickness, double tensile) => 0.6 * Math.PI * bearingDiameter * thickness * tensile / PartialFactor;

    /// <summary>Shear at which the edge of the hole yields to the bolt, N.</summary>
    /// <param name="diameter">Diameter of the bolt, m.</param>
    /// <param name="hole">Diameter of the hole, m.</param>
    /// <param name="edge">From the middle of the hole to the nearest edge in any direction, m; infinite where there is none near.</param>
    /// <param name="thickness">Thickness of the sheet, m.</param>
    /// <param name="tensile">Tensile strength of the sheet, Pa.</param>
    /// <param name="boltTensile">Tensile strength of the bolt, Pa.</param>
    /// <returns>k1·αb·fu·d·t/γ with αb = min(e/3d0, fub/fu, 1) and k1 = min(2.8·e/d0 − 1.7, 2.5), not under 0; the nearest edge counts both along and across the force.</returns>
    public static double Bearing(double diameter, double hole, double edge, double thickness, double tensile, double boltTensile)
    {
        var along = Math.Min(1, Math.Min(edge / (3 * hole), boltTensile / tensile));
        var across = Math.Clamp(2.8 * edge / hole - 1.7, 0, 2.5);
        return across * along * tensile * diameter * thickness / PartialFactor;
    }
}
