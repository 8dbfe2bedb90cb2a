using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Bottles;
using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Catalogue;

/// <summary>Writes one gas or liquefied gas of the catalogue.</summary>
internal static class ExpandingAgentAnswers
{
    const double Step = 10, IcePoint = 273.15;

    /// <summary>The agent; null with a fault where no such bottle can be.</summary>
    public static AgentDetailAnswer? Of(ExpandingAgent agent, in ChartAsk ask, TemperatureRange range, UnitWriter write, out Problem? fault)
    {
        fault = null;
        if (RestCurve.Of(agent, ask.Fill, ask.ChargePressure, ask.ChargeTemperature) is not { } curve)
        {
            fault = Problems.Query(ChartAsk.FillName, "No such bottle can be: the liquid leaves no room for gas, or its vapour alone has the charge pressure. A smaller fill or another charge pressure is right.");
            return null;
        }
        return new(agent.Id, agent.Title, KindWord.Of(agent.Kind), range, agent.Note, GasCautions.For(agent), [], Saturation(agent, write), Chart(agent, curve, write), SourceAnswers.Of([agent.Sources]));
    }

    static ImmutableArray<SaturationRow> Saturation(ExpandingAgent agent, UnitWriter write)
    {
        if (agent.HighestSaturation is not { } highest) return [];
        return [.. Temperatures(agent.LowestTemperature, highest).Select(temperature =>
        {
            var point = agent.SaturationAt(temperature);
            return new SaturationRow(
                write.Of(temperature, QuantityKind.Temperature), write.Absolute(point.Pressure), write.Of(point.LiquidDensity, QuantityKind.Density),
                write.Of(point.VapourDensity, QuantityKind.Density), write.Of(point.LiquidViscosity, QuantityKind.Viscosity));
        })];
    }

    static IEnumerable<double> Temperatures(double low, double high)
    {
        yield return low;
        for (var step = Math.Floor((low - IcePoint) / Step) + 1; IcePoint + step * Step < high; step++) yield return IcePoint + step * Step;
        yield return high;
    }

    static BottleChart Chart(ExpandingAgent agent, RestCurve curve, UnitWriter write) => new(
        write.Of(curve.Fill, QuantityKind.Density), curve.ChargePressure is { } pressure ? write.Of(pressure - ChartAsk.Ambient, QuantityKind.Pressure) : null,
        write.Of(curve.ChargeTemperature, QuantityKind.Temperature), agent.UsualFill is { } usual ? write.Of(usual, QuantityKind.Density) : null,
        [.. curve.Points.Select(point => new ChartRow(
            write.Of(point.Temperature, QuantityKind.Temperature), point.Pressure is { } at ? write.Of(at - ChartAsk.Ambient, QuantityKind.Pressure) : null, point.LiquidPart, Word(point.Phase)))]);

    static string? Word(BottlePhase? phase) => phase switch
    {
        BottlePhase.TwoPhase => "two-phase",
        BottlePhase.LiquidFull => "liquid-full",
        BottlePhase.OnePhase => "one-phase",
        _ => null,
    };
}
