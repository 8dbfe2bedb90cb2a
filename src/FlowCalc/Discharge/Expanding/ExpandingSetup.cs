using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Discharge;

/// <summary>From a layout with a gas or a liquefied gas to the numbers of one case.</summary>
internal static class ExpandingSetup
{
    const double PartOfLastDrop = 0.003;

    /// <summary>The problem of a case that has one.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="agent">Its agent.</param>
    /// <param name="line">Its line.</param>
    /// <param name="place">Its bottle in the attitude.</param>
    /// <param name="gravity">Effective gravity in the layout's axes, in g.</param>
    /// <param name="contents">What the bottle holds at the start.</param>
    /// <param name="choice">The uncertain choices of the model.</param>
    /// <param name="thresholds">Masses whose times are asked, kg, rising.</param>
    public static ExpandingProblem Of(
        Layout layout, ExpandingAgent agent, CompiledLine line, BottlePlace place, Direction gravity, in BottleContents contents, ExpandingChoice choice, double[] thresholds)
    {
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var isLiquid = contents.Phase == BottlePhase.TwoPhase;
        return new ExpandingProblem
        {
            Network = line.In(layout, gravity, outletRise: 0),
            Volume = line.Volume,
            Area = line.Area,
            Ambient = layout.AmbientPressure.Pascals,
            Bottle = BottleOf(bottle, agent, contents, choice, Heat(bottle, place, choice)),
            Count = bottle.Count,
            // What is above its critical temperature has no level.
            VolumeLeft = isLiquid ? Math.Min(Math.Max(place.VolumeBelowInlet, LastDrop(agent, contents)), bottle.Volume.CubicMeters) : 0,
            OpeningTime = bottle.OpeningTime.Seconds,
            ValveResistance = line.ValveResistance,
            SetPressure = bottle.Outlet?.Regulator?.SetPressure.Pascals ?? double.PositiveInfinity,
            Nozzles = choice.Nozzles,
            FloorPressure = agent.FloorPressure,
            Thresholds = thresholds,
        };
    }

    // Of a liquid under nitrogen, whose last drop would be more nitrogen than agent; it leaves as vapour.
    static double LastDrop(ExpandingAgent agent, in BottleContents contents) => agent.Solubility is null ? 0 : PartOfLastDrop * contents.Agent / contents.LiquidDensity;

    static IExpandingBottle BottleOf(Bottle bottle, ExpandingAgent agent, in BottleContents contents, ExpandingChoice choice, ShellHeat heat)
    {
        var (volume, mass) = (bottle.Volume.CubicMeters, bottle.Fill.Kilograms);
        return agent.Solubility is { } solubility
            ? new NitrogenBottle(agent.Fluid, solubility, volume, mass, contents.NitrogenInLiquid, contents.NitrogenInGas, contents.Temperature, choice.Lag, heat)
            : new PureBottle(agent.Fluid, volume, mass, contents.Temperature, heat);
    }

    static ShellHeat Heat(Bottle bottle, BottlePlace place, ExpandingChoice choice)
    {
        var area = place.WallArea;
        var heat = new ShellHeat { Area = area, Capacity = BottleShell.HeatCapacity(bottle.Wall, area), Gravity = place.Gravity * HydrostaticRise.StandardGravity, Factor = choice.WallFactor };
        return bottle.CushionHeat switch
        {
            CushionHeat.Adiabatic => heat with { Factor = 0 },
            CushionHeat.Isothermal => heat with { IsIsothermal = true },
            _ => heat,
        };
    }
}
