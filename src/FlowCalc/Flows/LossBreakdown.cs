using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>A drop of total pressure, by what causes it. The parts add up to the drop.</summary>
/// <param name="Outlet">Dip tube, valve and restrictor of the bottle.</param>
/// <param name="Tube">Friction of straight tube.</param>
/// <param name="Bends">Formed bends, the friction of their arcs with them.</param>
/// <param name="Tees">Dividing flow in tees.</param>
/// <param name="Fittings">Fittings and extra loss coefficients.</param>
/// <param name="BoreChanges">Steps in bore at reducers and tees.</param>
/// <param name="Rise">Height gained; negative for a fall.</param>
public readonly record struct LossBreakdown(Pressure Outlet, Pressure Tube, Pressure Bends, Pressure Tees, Pressure Fittings, Pressure BoreChanges, Pressure Rise)
{
    /// <summary>The whole drop.</summary>
    public Pressure Total => Outlet + Tube + Bends + Tees + Fittings + BoreChanges + Rise;
}
