using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>What drives a steady flow.</summary>
/// <param name="Reservoir">Absolute pressure of the reservoir, Pa.</param>
/// <param name="Outlet">What lies between the reservoir and the supply point.</param>
/// <param name="SetPressure">Absolute pressure that a regulator holds at the supply point, Pa; null without one.</param>
/// <param name="Failure">Why nothing drives it; null where something does.</param>
internal readonly record struct SupplyDrive(double Reservoir, RunGeometry Outlet, double? SetPressure, string? Failure)
{
    /// <summary>The drive of a layout at its temperature.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="agent">Its liquid.</param>
    public static SupplyDrive Of(Layout layout, LiquidAgent agent)
    {
        var bore = FirstBore(layout);
        if (layout.Supply is HeldSupply held) return new(held.Pressure.Pascals, OutletGeometry.Free(bore), null, null);
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var outlet = OutletGeometry.Of(bottle, bore);
        if (!BottlePressure.TryAt(bottle, agent, layout.Temperature.Kelvins, out var pressure))
            return new(pressure, outlet, null, BottlePressure.LiquidPart(bottle, agent, Math.Max(layout.Temperature.Kelvins, bottle.ChargeTemperature.Kelvins)) < 1
                ? "The cushion has no state within the data of its gas: its pressure is not known."
                : "The liquid fills the whole bottle at this temperature: no cushion is left to drive it, and its pressure is not known.");
        return new(pressure, outlet, bottle.Outlet?.Regulator?.SetPressure.Pascals, WhyNothingFlows(bottle, pressure, layout.AmbientPressure.Pascals));
    }

    /// <summary>The same drive on a line whose first tube is another.</summary>
    /// <param name="layout">The layout with that line; its supply and temperature are those of the drive.</param>
    public SupplyDrive On(Layout layout)
    {
        var bore = FirstBore(layout);
        return this with { Outlet = layout.Supply is BottleSupply { Bottle: var bottle } ? OutletGeometry.Of(bottle, bore) : OutletGeometry.Free(bore) };
    }

    /// <summary>Why a bottle's pressure lets nothing out.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="pressure">Absolute pressure in it, Pa.</param>
    /// <param name="ambient">Absolute pressure of the surroundings, Pa.</param>
    /// <returns>A sentence; null where it drives a flow.</returns>
    public static string? WhyNothingFlows(Bottle bottle, double pressure, double ambient)
    {
        if (bottle.Outlet?.BurstPressure is { } burst && pressure < burst.Pascals)
            return "The pressure in the bottle is below the burst pressure of the disc in its outlet: nothing flows.";
        return pressure > ambient ? null : "The pressure in the bottle is not above the surroundings': nothing flows.";
    }

    /// <summary>Bore of the run that leaves the supply, m.</summary>
    /// <param name="layout">A checked layout.</param>
    public static double FirstBore(Layout layout)
    {
        foreach (var run in layout.Runs)
            if (layout.Points[run.From] is SupplyPoint)
                return run.Tube.Bore.Meters;
        throw new ArgumentException("No run leaves the supply.", nameof(layout));
    }
}
