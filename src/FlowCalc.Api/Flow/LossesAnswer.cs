using FlowCalc.Api.Answers;
using FlowCalc.Flows;

namespace FlowCalc.Api.Flow;

/// <summary>A drop of total pressure, by what causes it. The parts add up to the drop.</summary>
/// <param name="Outlet">Dip tube, valve and restrictor of the bottle.</param>
/// <param name="Tube">Friction of straight tube.</param>
/// <param name="Bends">Formed bends, the friction of their arcs with them.</param>
/// <param name="Tees">Dividing flow in tees; negative where a tee gives pressure back to the run that goes straight on.</param>
/// <param name="Fittings">Fittings and extra loss coefficients.</param>
/// <param name="BoreChanges">Steps in bore at reducers and tees.</param>
/// <param name="Rise">Height gained; negative for a fall.</param>
public readonly record struct LossesAnswer(Quantity Outlet, Quantity Tube, Quantity Bends, Quantity Tees, Quantity Fittings, Quantity BoreChanges, Quantity Rise)
{
    internal static LossesAnswer Of(in LossBreakdown losses, UnitWriter write) => new(
        write.Of(losses.Outlet), write.Of(losses.Tube), write.Of(losses.Bends), write.Of(losses.Tees), write.Of(losses.Fittings), write.Of(losses.BoreChanges), write.Of(losses.Rise));
}
