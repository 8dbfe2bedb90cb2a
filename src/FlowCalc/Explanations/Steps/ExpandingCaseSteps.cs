using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>A case of the discharge of a gas or of an agent that boils, at its start.</summary>
internal static class ExpandingCaseSteps
{
    /// <summary>Writes the case down, after its bottle at rest.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="agent">Its agent.</param>
    /// <param name="place">Its bottle in the attitude.</param>
    /// <param name="one">The case, which has a discharge.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>States along the way; none where there is no flow to explain.</returns>
    public static PathState[] Add(StepLog log, Layout layout, ExpandingAgent agent, BottlePlace place, DischargeCase one, CancellationToken cancellationToken)
    {
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var contents = ExpandingContents.Of(bottle, agent, one.Temperature.Kelvins);
        if (contents.Phase == BottlePhase.TwoPhase && place.VolumeBelowInlet >= contents.LiquidPart * bottle.Volume.CubicMeters) return [];
        var outlet = OutletGeometry.Of(bottle, SupplyDrive.FirstBore(layout));
        var drive = new SupplyDrive(contents.Pressure, outlet, bottle.Outlet?.Regulator?.SetPressure.Pascals, null);
        LayoutNetwork Turned(LayoutNetwork compiled)
        {
            var rise = new double[compiled.Network.Count];
            for (var j = 1; j < rise.Length; j++) rise[j] = AttitudeRise.Of(layout, layout.Runs[compiled.Runs[j]], one.Attitude.Gravity);
            return compiled with { Network = compiled.Network.WithRise(rise) };
        }
        var (solved, _) = ExpandingFlow.Follow(
            layout, Turned(layout.Compile(outlet)), drive, () => ExpandingContents.Stream(agent, contents, ExpandingDrive.Below * layout.AmbientPressure.Pascals), layout.NozzleModel, Turned, cancellationToken);
        if (solved is null) return [];
        var steps = new ExpandingSteps(log, layout, solved);
        steps.Add(cancellationToken);
        log.At(ExplainedPlace.Supply, layout.Points.OfType<SupplyPoint>().Single().Id);
        var flow = solved.State.Steady.Flow[0];
        log.Add(BottleEquations.Contents, "at the start", flow / (bottle.Count * bottle.Fill.Kilograms), flow, bottle.Count, bottle.Fill.Kilograms);
        return [.. steps.Table()];
    }
}
