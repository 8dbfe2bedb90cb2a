using System.Text.Json;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>Finds mass and charge pressure of a bottle of a gas or a liquefied gas, and sees that they fit.</summary>
static class ExpandingFill
{
    // Beyond, no bottle is made, and the properties' fast form ends.
    const double HighestPressure = 1e8;

    static readonly (double, double) Nothing = (double.NaN, double.NaN);

    /// <summary>Mass of agent, kg, and absolute pressure at the charge temperature, Pa; NaN where they are not known.</summary>
    public static (double Mass, double Pressure) Read(ReadingContext context, in Members<BottleField> members, ExpandingAgent agent, double volume, double temperature, double charge)
    {
        if (!double.IsFinite(temperature)) return Nothing;
        if (!TemperatureReader.Suits(context, agent, temperature, members.Owner, "chargeTemperature", members[BottleField.ChargeTemperature])) return Nothing;
        if (agent.Kind == AgentKind.InertGas) return Gas(context, members, agent, volume, temperature, charge);
        var mass = Mass(context, members, agent, volume, temperature);
        if (!double.IsFinite(mass) || !double.IsFinite(volume)) return Nothing;
        return agent.Kind == AgentKind.LiquefiedGas
            ? Alone(context, members, agent, volume, temperature, mass)
            : UnderNitrogen(context, members, agent, volume, temperature, mass, charge);
    }

    static (double, double) Gas(ReadingContext context, in Members<BottleField> members, ExpandingAgent agent, double volume, double temperature, double charge)
    {
        if (!double.IsFinite(charge + volume)) return Nothing;
        var density = charge <= HighestPressure ? agent.Fluid.GasDensity(temperature, charge) : double.NaN;
        if (double.IsFinite(density) && double.IsFinite(agent.Fluid.At(temperature, density).Pressure)) return (density * volume, charge);
        context.Faults.Add(members[BottleField.ChargePressure], $"read {QuantityValue.Shown(members[BottleField.ChargePressure])}: {agent.Title} has no state of it within its data at {Celsius(temperature)}; less is right");
        return Nothing;
    }

    // A fill volume is that of the saturated liquid.
    static double Mass(ReadingContext context, in Members<BottleField> members, ExpandingAgent agent, double volume, double temperature)
    {
        var element = members[BottleField.Fill];
        if (element.ValueKind is JsonValueKind.Undefined || BottleFill.Way(context, element) is not { } way) return double.NaN;
        var fill = QuantityValue.Read(context, element, way);
        if (way.Kind == QuantityKind.Density) return fill * volume;
        if (way.Kind != QuantityKind.Volume || !double.IsFinite(fill)) return fill;
        if (temperature < agent.CriticalTemperature) return fill * agent.Fluid.ExactSaturation(temperature).LiquidDensity;
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: at {Celsius(temperature)} {agent.Title} is over its critical temperature of {Celsius(agent.CriticalTemperature!.Value)} and has no liquid to measure; give a mass or a fill density");
        return double.NaN;
    }

    static (double, double) Alone(ReadingContext context, in Members<BottleField> members, ExpandingAgent agent, double volume, double temperature, double mass)
    {
        var contents = ExpandingContents.Alone(agent, volume, mass, temperature);
        if (contents.Pressure <= HighestPressure && contents.Pressure > context.Ambient) return (mass, contents.Pressure);
        var element = members[BottleField.Fill];
        context.Faults.Add(element, contents.Pressure <= context.Ambient
            ? $"read {QuantityValue.Shown(element)}: {mass / volume:0.###} kg/m3 in the bottle have a pressure of {contents.Pressure / 1e5:0.####} bar absolute at {Celsius(temperature)}, not over the ambient {context.Ambient / 1e5:0.#####} bara; more is right"
            : $"read {QuantityValue.Shown(element)}: {mass / volume:0.#} kg/m3 do not go into the bottle at {Celsius(temperature)} below 1000 bar{Usual(agent)}");
        return Nothing;
    }

    static (double, double) UnderNitrogen(
        ReadingContext context, in Members<BottleField> members, ExpandingAgent agent, double volume, double temperature, double mass, double charge)
    {
        var point = agent.Fluid.ExactSaturation(temperature);
        var fill = members[BottleField.Fill];
        if (mass / point.LiquidDensity >= volume)
        {
            context.Faults.Add(fill, $"read {QuantityValue.Shown(fill)}: {mass:0.######} kg take up {mass / point.LiquidDensity * 1e3:0.######} L at the charge temperature and leave no room for the nitrogen; less than {volume * point.LiquidDensity:0.######} kg fit into {volume * 1e3:0.######} L{Usual(agent)}");
            return Nothing;
        }
        if (!double.IsFinite(charge)) return Nothing;
        var pressure = members[BottleField.ChargePressure];
        if (charge <= point.Pressure)
        {
            context.Faults.Add(pressure, $"read {QuantityValue.Shown(pressure)}: {agent.Title} alone has {point.Pressure / 1e5:0.####} bar absolute at {Celsius(temperature)}; a charge pressure is over that");
            return Nothing;
        }
        if (new NitrogenEquilibrium(agent.Fluid, agent.Solubility!).Charge(volume, mass, temperature, charge).Pressure > 0) return (mass, charge);
        context.Faults.Add(fill, $"read {QuantityValue.Shown(fill)}: with the nitrogen that {QuantityValue.Shown(pressure)} dissolve in it, it leaves no gas in the bottle at {Celsius(temperature)}, or has no liquid; less of one or more of the other is right{Usual(agent)}");
        return Nothing;
    }

    static string Usual(ExpandingAgent agent) => agent.UsualFill is { } most ? $"; up to {most:0} kg/m3 is usual" : "";

    static string Celsius(double kelvin) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kelvin - 273.15:0.###} °C");
}
