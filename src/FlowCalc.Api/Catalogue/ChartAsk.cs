using FlowCalc.Agents;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Catalogue;

/// <summary>The bottle that a chart is asked for; what is not asked takes the usual figure.</summary>
/// <param name="Fill">Fill density, kg/m³; null for the usual one.</param>
/// <param name="ChargePressure">Absolute pressure, Pa; null for a usual one.</param>
/// <param name="ChargeTemperature">K.</param>
internal readonly record struct ChartAsk(double? Fill, double? ChargePressure, double ChargeTemperature)
{
    /// <summary>Names of the query.</summary>
    public const string FillName = "fill", PressureName = "chargePressure", TemperatureName = "chargeTemperature";

    /// <summary>Pressure of the surroundings of a bottle in a chart, Pa.</summary>
    public const double Ambient = 101_325;

    const double Usual = 293.15;

    /// <summary>Reads units and bottle from a query.</summary>
    public static ChartAsk Read(HttpRequest request, out UnitWriter write, out Problem? fault)
    {
        write = QueryUnits.Read(request, out fault, FillName, PressureName, TemperatureName);
        if (fault is not null) return default;
        var fill = Quantity(request, FillName, QuantityKind.Density, ref fault);
        var pressure = Quantity(request, PressureName, QuantityKind.Pressure, ref fault);
        var temperature = Quantity(request, TemperatureName, QuantityKind.Temperature, ref fault);
        return new(fill?.Si, pressure is { } read ? read.IsGauge ? read.Si + Ambient : read.Si : null, temperature?.Si ?? Usual);
    }

    /// <summary>Holds what was asked against an agent.</summary>
    /// <param name="agent">The agent.</param>
    /// <returns>What does not fit; null where all does.</returns>
    public Problem? Check(Agent agent)
    {
        if (agent.Kind == AgentKind.Liquid)
            return Fill is null && ChargePressure is null && ChargeTemperature == Usual ? null : Problems.Query(FillName, "A chart is drawn for a gas or a liquefied gas; this agent is a liquid.");
        if (agent.Kind == AgentKind.InertGas && Fill is not null) return Problems.Query(FillName, "A bottle of gas holds what its charge pressure says; leave the fill out.");
        if (agent.Kind == AgentKind.LiquefiedGas && ChargePressure is not null) return Problems.Query(PressureName, "This agent drives itself out: its pressure follows from fill and temperature; leave it out.");
        if (!agent.Covers(ChargeTemperature))
            return Problems.Query(TemperatureName, FormattableString.Invariant($"It is answered from {agent.LowestTemperature - 273.15:0.##} to {agent.HighestTemperature - 273.15:0.##} °C."));
        if (Fill is { } fill && !(fill is > 0.1 and < 3000)) return Problems.Query(FillName, "A fill density is 0.1 to 3000 kg/m3.");
        return ChargePressure is { } pressure && !(pressure > Ambient && pressure <= 1e8) ? Problems.Query(PressureName, "A charge pressure is over 0 to 1000 bar.") : null;
    }

    static Reading? Quantity(HttpRequest request, string name, QuantityKind kind, ref Problem? fault)
    {
        if (!request.Query.TryGetValue(name, out var values)) return null;
        if (values.Count != 1) fault ??= Problems.Query(name, "It stands more than once; once is enough.");
        else if (QuantityReader.TryRead(System.Text.Encoding.UTF8.GetBytes(values[0] ?? ""), kind, out var reading, out var why)) return reading;
        else fault ??= Problems.Query(name, Problems.Shortened(why));
        return null;
    }
}
