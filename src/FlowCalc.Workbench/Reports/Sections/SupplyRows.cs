using System.Globalization;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>Agent, surroundings and what drives the flow, a row each.</summary>
static class SupplyRows
{
    public static IEnumerable<string[]> Of(Layout layout, Shown shown)
    {
        yield return ["agent", layout.Agent.Title];
        yield return ["temperature of the steady flow", shown.Of(layout.Temperature)];
        yield return ["pressure of the surroundings", Absolute(layout.AmbientPressure.Pascals, shown)];
        if (layout.Supply is HeldSupply held) yield return ["supply held at", shown.Gauge(held.Pressure)];
        if (layout.Supply is not BottleSupply { Bottle: var bottle }) yield break;
        yield return ["bottles", bottle.Count.ToString(CultureInfo.InvariantCulture)];
        yield return ["inside volume of a bottle", shown.Of(bottle.Volume.CubicMeters, QuantityKind.Volume)];
        yield return ["agent in a bottle", shown.Of(bottle.Fill)];
        yield return ["charged to", $"{shown.Gauge(bottle.ChargePressure)} at {shown.Of(bottle.ChargeTemperature)}"];
        yield return ["cushion", $"{bottle.CushionGas.ToString().ToLowerInvariant()}, {Heat(bottle.CushionHeat)}"];
        if (bottle.OpeningTime.Seconds > 0) yield return ["the valve opens within", shown.Of((UnitsNet.Duration?)bottle.OpeningTime)];
        yield return ["working pressure of the bottle", bottle.WorkingPressure is { } working ? shown.Gauge(working) : "not stated"];
        if (bottle.EmptyMass is { } empty) yield return ["empty bottle with its valve", shown.Of(empty)];
        if (bottle.Shape is { } shape) yield return ["inside of the bottle", $"{shown.Of(shape.Diameter)} across, {shown.Of(shape.Length)} long"];
        if (bottle.Wall is { } wall) yield return ["shell", $"{wall.Material}, {shown.Of(wall.Thickness)}"];
        yield return ["axis of the bottle, base to outlet", string.Join(", ", bottle.Axis.Select(Shown.Number)).Replace('-', '−')];
        foreach (var row in Outlet(bottle.Outlet, shown)) yield return row;
    }

    static IEnumerable<string[]> Outlet(BottleOutlet? outlet, Shown shown)
    {
        if (outlet is null) yield return ["outlet", "without loss"];
        if (outlet?.DipTube is { } dip) yield return ["dip tube", $"{shown.Of(dip.Bore)} bore, {shown.Of(dip.Length)} long{(dip.Follows ? ", follows the liquid" : "")}"];
        if (outlet?.ValveKv is { } kv) yield return ["valve", shown.Of(kv, QuantityKind.FlowCoefficient)];
        if (outlet?.Regulator is { } regulator) yield return ["regulator", $"set to {shown.Gauge(regulator.SetPressure)}{(regulator.Kv is { } open ? $", {shown.Of(open, QuantityKind.FlowCoefficient)} open" : "")}"];
        if (outlet?.Restrictor is { } restrictor) yield return ["restrictor", $"{shown.Of(restrictor.Diameter)} hole, C {Shown.Number(restrictor.DischargeCoefficient)}"];
        if (outlet?.BurstPressure is { } burst) yield return ["burst disc opens at", shown.Gauge(burst)];
    }

    static string Absolute(double pascals, Shown shown)
    {
        var (value, unit) = QuantityWriter.WriteAbsolute(pascals, shown.System);
        return $"{value.ToString("G4", CultureInfo.InvariantCulture)} {unit}";
    }

    static string Heat(CushionHeat heat) => heat switch
    {
        CushionHeat.Wall => "takes heat from the wall",
        CushionHeat.Isothermal => "keeps its temperature",
        CushionHeat.Adiabatic => "takes no heat",
        _ => throw new ArgumentOutOfRangeException(nameof(heat), heat, "No such process."),
    };
}
