using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>Losses by kind as raw numbers, Pa; for sums along the way from the supply.</summary>
internal readonly record struct LossParts(double Outlet, double Tube, double Bends, double Tees, double Fittings, double BoreChanges, double Rise)
{
    /// <summary>The whole, Pa.</summary>
    public double Total => Outlet + Tube + Bends + Tees + Fittings + BoreChanges + Rise;

    /// <summary>Sums kind by kind.</summary>
    public static LossParts operator +(in LossParts a, in LossParts b) => new(
        a.Outlet + b.Outlet, a.Tube + b.Tube, a.Bends + b.Bends, a.Tees + b.Tees, a.Fittings + b.Fittings, a.BoreChanges + b.BoreChanges, a.Rise + b.Rise);

    /// <summary>All kinds in proportion.</summary>
    /// <param name="factor">The factor.</param>
    public LossParts Times(double factor) => new(
        factor * Outlet, factor * Tube, factor * Bends, factor * Tees, factor * Fittings, factor * BoreChanges, factor * Rise);

    /// <summary>The same with units.</summary>
    public LossBreakdown ToBreakdown() => new(
        Pressure.FromPascals(Outlet),
        Pressure.FromPascals(Tube),
        Pressure.FromPascals(Bends),
        Pressure.FromPascals(Tees),
        Pressure.FromPascals(Fittings),
        Pressure.FromPascals(BoreChanges),
        Pressure.FromPascals(Rise));
}
