using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;

namespace FlowCalc.Flows;

/// <summary>What drives the steady flow of a gas or a liquefied gas.</summary>
/// <param name="Drive">Pressure, outlet and regulator.</param>
/// <param name="Stream">Makes the stream that enters the line; null where nothing does.</param>
internal readonly record struct ExpandingDrive(SupplyDrive Drive, Func<IStream>? Stream)
{
    // A table reaches down to this part of the surroundings' pressure.
    internal const double Below = 0.5;

    /// <summary>The drive of a layout at its temperature.</summary>
    /// <param name="layout">A checked layout of such an agent.</param>
    public static ExpandingDrive Of(Layout layout)
    {
        var agent = (ExpandingAgent)layout.Agent;
        var (temperature, ambient) = (layout.Temperature.Kelvins, layout.AmbientPressure.Pascals);
        var bore = SupplyDrive.FirstBore(layout);
        if (layout.Supply is HeldSupply held)
        {
            var pressure = held.Pressure.Pascals;
            var density = agent.RestDensity(temperature, pressure);
            var drive = new SupplyDrive(pressure, OutletGeometry.Free(bore), null, double.IsFinite(density) ? null : "The agent has no state at the supply's pressure within its data.");
            return new(drive, () => new PureStream(agent.Fluid, pressure, agent.Fluid.Exact(temperature, density).Enthalpy, temperature, density, Below * ambient));
        }
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var contents = ExpandingContents.Of(bottle, agent, temperature);
        var outlet = OutletGeometry.Of(bottle, bore);
        var why = WhyNot(agent, contents) ?? SupplyDrive.WhyNothingFlows(bottle, contents.Pressure, ambient);
        return new(new(contents.Pressure, outlet, bottle.Outlet?.Regulator?.SetPressure.Pascals, why), () => ExpandingContents.Stream(agent, contents, Below * ambient));
    }

    /// <summary>Why contents cannot be followed out of their bottle.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="contents">The contents.</param>
    /// <returns>A sentence; null where they can.</returns>
    public static string? WhyNot(ExpandingAgent agent, in BottleContents contents)
    {
        if (agent.Solubility is not null && contents.Phase == BottlePhase.LiquidFull)
            return "The liquid with its dissolved nitrogen fills the whole bottle at this temperature: no gas is left to drive it.";
        if (!double.IsFinite(contents.Pressure)) return "The bottle's contents have no state within the agent's data at this temperature.";
        return contents.Phase == BottlePhase.TwoPhase && contents.Temperature > agent.Fluid.Saturation!.HighestTemperature
            ? "Liquid and vapour are within 0.5 % of the critical temperature, where they are hardly two: no answer is given there."
            : null;
    }
}
