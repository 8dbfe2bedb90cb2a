using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Which values things may have, as the reader of documents has it; each says why one is not possible, null where it is.</summary>
internal static class PossibleValues
{
    const double RoughestPart = 0.05;
    const double HighestPressure = 1e8;

    /// <summary>A bore of some runs, m.</summary>
    public static string? OfBore(Layout layout, ImmutableArray<int> runs, double bore)
    {
        if (!Sizes.Bore.Holds(bore)) return Outside(Sizes.Bore);
        foreach (var index in runs)
        {
            var run = layout.Runs[index];
            if (run.Tube.OutsideDiameter is { } outside && bore >= outside.Meters) return Text($"the bore is less than the outside diameter of {1e3 * outside.Meters:0.###} mm");
            foreach (var bend in run.Bends)
                if (bend.Radius.Meters < 0.5 * bore) return Text($"a bend of {run.Id} has a radius of {1e3 * bend.Radius.Meters:0.###} mm, and that is half the bore or more");
        }
        return null;
    }

    /// <summary>A roughness of a tube, m.</summary>
    public static string? OfRoughness(Tube tube, double roughness) =>
        roughness >= 0 && roughness <= RoughestPart * tube.Bore.Meters ? null : Outside(Sizes.Roughness);

    /// <summary>A length of a run, m.</summary>
    public static string? OfLength(Run run, double length)
    {
        double arcs = 0;
        foreach (var bend in run.Bends) arcs += bend.Arcs.Meters;
        if (!Sizes.RunLength.Holds(length)) return Outside(Sizes.RunLength);
        return length >= arcs ? null : Text($"the arcs of its bends alone take {1e3 * arcs:0.#} mm");
    }

    /// <summary>A K-factor, m³/(s·√Pa).</summary>
    public static string? OfKFactor(double factor) => Sizes.KFactor.Holds(factor) ? null : Outside(Sizes.KFactor);

    /// <summary>A charge pressure, Pa absolute.</summary>
    public static string? OfChargePressure(Layout layout, Bottle bottle, double pressure)
    {
        var (charge, ambient) = (bottle.ChargeTemperature.Kelvins, layout.AmbientPressure.Pascals);
        if (!Sizes.Pressure.Holds(pressure)) return Outside(Sizes.Pressure);
        if (pressure <= ambient) return Text($"a charge pressure is over the ambient pressure of {ambient / 1e5:0.#####} bara");
        var boiling = layout.Agent switch
        {
            LiquidAgent liquid => liquid.VapourPressure(charge),
            ExpandingAgent { Kind: AgentKind.LiquefiedUnderNitrogen } agent => agent.Fluid.ExactSaturation(charge).Pressure,
            _ => 0,
        };
        if (pressure <= boiling) return Text($"the agent alone has {boiling / 1e5:0.####} bara at the charge temperature");
        if (layout.Agent is not ExpandingAgent { Kind: AgentKind.InertGas } gas) return null;
        var density = pressure <= HighestPressure ? gas.Fluid.GasDensity(charge, pressure) : double.NaN;
        return double.IsFinite(density) && double.IsFinite(gas.Fluid.At(charge, density).Pressure) ? null : "the gas has no state of it within its data";
    }

    /// <summary>A fill, kg.</summary>
    public static string? OfFill(Layout layout, Bottle bottle, double mass)
    {
        var (charge, volume) = (bottle.ChargeTemperature.Kelvins, bottle.Volume.CubicMeters);
        if (!Sizes.FillMass.Holds(mass)) return Outside(Sizes.FillMass);
        if (layout.Agent is ExpandingAgent { Kind: AgentKind.LiquefiedGas } alone)
        {
            var pressure = ExpandingContents.Alone(alone, volume, mass, charge).Pressure;
            return pressure <= HighestPressure && pressure > layout.AmbientPressure.Pascals ? null : "the bottle's pressure would not be over the surroundings' or not below 1000 bar at the charge temperature";
        }
        var density = layout.Agent is LiquidAgent liquid ? liquid.Density(charge) : ((ExpandingAgent)layout.Agent).Fluid.ExactSaturation(charge).LiquidDensity;
        return mass / density < volume ? null : Text($"less than {volume * density:0.######} kg leave the gas any room at the charge temperature");
    }

    /// <summary>A temperature, K. A discharge tells of each case whether it has an answer.</summary>
    public static string? OfTemperature(Layout layout, StudiedAnswer answer, double kelvins)
    {
        if (!Sizes.Temperature.Holds(kelvins)) return Outside(Sizes.Temperature);
        if (answer == StudiedAnswer.Discharge) return null;
        if (kelvins < layout.Agent.FreezingPoint) return Text($"{layout.Agent.Title} freezes at {layout.Agent.FreezingPoint.Value - 273.15:0.###} °C");
        return layout.Agent.Covers(kelvins) ? null : $"it is outside the data of {layout.Agent.Title}";
    }

    static string Outside(SizeRange range) => $"{range.What} is {range.Words}";

    static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
