namespace FlowCalc.Mounts;

/// <summary>Bending of the plates of a mount, elastic; and the prying that comes of it.</summary>
public static class PlateBending
{
    const double Poisson = 0.3;

    /// <summary>Prying: what the foot's edge adds to the pull of its bolt, as a part of the pull, dimensionless.</summary>
    /// <param name="toBend">From the bolt to the bend, m: the arm of the pull.</param>
    /// <param name="toEdge">From the bolt to the free edge, m; over 1.25 times the arm counts as that (EN 1993-1-8, 6.2.4, from memory).</param>
    /// <returns>Q/F = 3·m²/(2·n·(3·m + n)).</returns>
    /// <remarks>
    /// Derived: a strip held from turning at the bend, on a bolt that does not give at m, its edge pressing at n behind it. The slopes of both spans at the bolt agree:
    /// (F·m − 2·Q·n)·m/2 = Q·n·n/3. A bolt that stretches only takes away from it, so it is an upper bound. For m = n it is 3/8, as in the
    /// rule Q = 3/8·(b/a)·F of older handbooks (Douty and McGuire 1965, from memory).
    /// </remarks>
    public static double Prying(double toBend, double toEdge)
    {
        var (m, n) = (toBend, Math.Min(toEdge, 1.25 * toBend));
        return 3 * m * m / (2 * n * (3 * m + n));
    }

    /// <summary>Greatest bending stress in a foot over the pull on its bolt, Pa/N.</summary>
    /// <param name="toBend">From the bolt to the bend, m.</param>
    /// <param name="toEdge">From the bolt to the free edge, m.</param>
    /// <param name="width">Width of the strip, m.</param>
    /// <param name="thickness">Its thickness, m.</param>
    /// <returns>6·M/(w·t²), with M the greater of Q·n at the bolt and F·m − Q·n at the bend.</returns>
    public static double Foot(double toBend, double toEdge, double width, double thickness)
    {
        var atBolt = Prying(toBend, toEdge) * Math.Min(toEdge, 1.25 * toBend);
        return 6 * Math.Max(atBolt, toBend - atBolt) / (width * thickness * thickness);
    }

    /// <summary>Greatest bending stress in a round plate held at its rim over the force in its middle, Pa/N.</summary>
    /// <param name="span">Diameter of the rim, m.</param>
    /// <param name="loaded">Diameter of what the force stands on, m, under the span.</param>
    /// <param name="thickness">Thickness, m.</param>
    /// <returns>The greater of 3/(2π·t²)·(1 − r²/2a²) at the rim and 3·(1 + ν)/(2π·t²)·(ln(a/r) + r²/4a²) in the middle, by a = span/2 and r = loaded/2, but r not under the r' of a force on a point.</returns>
    /// <remarks>
    /// Source: S. Timoshenko and S. Woinowsky-Krieger, Theory of Plates and Shells, clamped circular plate loaded over a concentric circle; r' = √(1.6·r² + t²) − 0.675·t
    /// after H. M. Westergaard, as in Roark's Formulas for Stress and Strain (all from memory). ν = 0.3. Deflections small against the thickness: a thin sheet carries more as a membrane.
    /// </remarks>
    public static double ClampedDisc(double span, double loaded, double thickness)
    {
        var a = span / 2;
        var r = Math.Min(a, loaded / 2);
        var equivalent = r < 0.5 * thickness ? Math.Sqrt(1.6 * r * r + thickness * thickness) - 0.675 * thickness : r;
        var part = Math.Min(1, equivalent / a);
        var rim = 1 - part * part / 2;
        var middle = (1 + Poisson) * (Math.Log(1 / part) + part * part / 4);
        return 3 / (2 * Math.PI * thickness * thickness) * Math.Max(rim, middle);
    }

    /// <summary>Bending stress in a plate that carries a pull from one bolt to the next over the force, Pa/N.</summary>
    /// <param name="arm">Distance between the two bolts, m.</param>
    /// <param name="head">Width of the head at which the strip begins, m.</param>
    /// <param name="thickness">Thickness, m.</param>
    /// <returns>6·a/(w·t²), a cantilever of the width w = head + 2·a, as the load spreads at 45° (the spread: common practice, no source).</returns>
    public static double Strip(double arm, double head, double thickness) => 6 * arm / ((head + 2 * arm) * thickness * thickness);
}
