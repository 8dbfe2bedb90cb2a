using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>The losses of the bottle's outlet.</summary>
internal static class OutletSteps
{
    /// <summary>Writes dip tube, valve, open regulator and restrictor down; nothing of an outlet whose regulator throttles, or of a supply held at a pressure.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="line">The line.</param>
    public static void Add(StepLog log, ExplainedLine line)
    {
        if (line.Layout.Supply is not BottleSupply { Bottle: { Outlet: { } outlet } bottle } || line.IsThrottled || line.Flow[0] == 0) return;
        var (flow, density) = (line.Flow[0], line.Density);
        if (bottle.Count > 1) flow = log.Add(OutletEquations.FlowOfOne, "one bottle", flow / bottle.Count, flow, bottle.Count);
        if (outlet.DipTube is { } dip) Dip(log, line, dip, flow);
        if (outlet.ValveKv is { } valve) FittingSteps.FlowCoefficient(log, LossKind.Outlet, "valve", 1, valve, density, flow);
        if (outlet.Regulator?.Kv is { } regulator) FittingSteps.FlowCoefficient(log, LossKind.Outlet, "open regulator", 1, regulator, density, flow);
        if (outlet.Restrictor is not { } plate) return;
        var (hole, discharge) = (plate.Diameter.Meters, plate.DischargeCoefficient);
        log.Loss(
            LossKind.Outlet, OutletEquations.Restrictor, "restrictor", Orifice.PressureDrop(flow / density, density, Orifice.EffectiveArea(hole, discharge)).PressureDrop,
            flow, density, discharge, hole);
    }

    static void Dip(StepLog log, ExplainedLine line, DipTube dip, double flow)
    {
        const string name = "dip tube";
        var (bore, viscosity) = (dip.Bore.Meters, line.Viscosity(0));
        var velocity = FrictionSteps.Velocity(log, name, flow, line.Density, bore);
        FittingSteps.Coefficient(log, LossKind.Outlet, "inlet of the dip tube, square-cut (Rennels and Hudson 2012, ch. 9)", 1, TubeInlet.SquareCut, line.Density, velocity);
        var reynolds = FrictionSteps.Reynolds(log, name, flow, bore, viscosity);
        var factor = FrictionSteps.Factor(log, name, reynolds, dip.Roughness.Meters, bore);
        log.Loss(
            LossKind.Outlet, TubeEquations.TubeFriction, name, LossLedger.Friction(line.Network.Tubes, 0, line.Flow[0], line.Density, viscosity),
            factor, dip.Length.Meters, bore, line.Density, velocity);
    }
}
