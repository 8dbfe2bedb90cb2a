using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>From a layout to the numbers of one case.</summary>
internal static class CaseSetup
{
    // Specific gas constant of dry air, J/(kg·K).
    const double Air = 287.05;

    /// <summary>The problem of a case that has one.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="line">Its line.</param>
    /// <param name="place">Its bottle in the attitude.</param>
    /// <param name="gravity">Effective gravity in the layout's axes, in g.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="conditions">Liquid and cushion at that temperature.</param>
    /// <param name="choice">The uncertain choices of the model.</param>
    /// <param name="thresholds">Masses whose times are asked, kg, rising.</param>
    public static DischargeProblem Of(
        Layout layout, CompiledLine line, BottlePlace place, Direction gravity, double temperature, in CaseConditions conditions, ModelChoice choice, double[] thresholds)
    {
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var ambient = layout.AmbientPressure.Pascals;
        var (gas, transport) = CushionGases.Of(bottle.CushionGas);
        // An outlet that is not described has no place either.
        var hasHead = place.Level is not null && bottle.Outlet is not null;
        var outletRise = !hasHead ? 0 : (place.OutletHeight - place.InletHeight) * place.Gravity;
        return new DischargeProblem
        {
            Network = line.In(layout, gravity, outletRise),
            Volume = line.Volume,
            Area = line.Area,
            Liquid = new LiquidPath(conditions.Density, conditions.Viscosity, ambient),
            Ambient = ambient,
            Cushion = new Cushion
            {
                Gas = gas,
                Process = bottle.CushionHeat switch
                {
                    CushionHeat.Isothermal => CushionProcess.Isothermal,
                    CushionHeat.Adiabatic => CushionProcess.Adiabatic,
                    _ => CushionProcess.Convection,
                },
                Temperature = temperature,
                Density = conditions.CushionDensity,
                WallHeatCapacity = BottleShell.HeatCapacity(bottle.Wall, place.WallArea),
                Film = new FreeConvection(transport, place.Gravity * HydrostaticRise.StandardGravity, temperature, choice.WallFactor),
            },
            Count = bottle.Count,
            BottleVolume = bottle.Volume.CubicMeters,
            LiquidVolume = bottle.Fill.Kilograms / conditions.Density,
            VolumeLeft = Math.Min(place.VolumeBelowInlet, bottle.Fill.Kilograms / conditions.Density),
            Level = place.Level,
            HasHead = hasHead,
            InletHeight = place.InletHeight,
            Gravity = place.Gravity,
            WallArea = place.WallArea,
            OpeningTime = bottle.OpeningTime.Seconds,
            ValveResistance = line.ValveResistance,
            SetPressure = bottle.Outlet?.Regulator?.SetPressure.Pascals ?? double.PositiveInfinity,
            Film = choice.Film,
            AirDensity = ambient / (Air * temperature),
            Thresholds = thresholds,
        };
    }
}
