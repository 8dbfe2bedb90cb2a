using System.Text.Json;
using FlowCalc.Agents;

namespace FlowCalc.Layouts.Reading;

/// <summary>Finds the temperature of a steady flow and holds it against the agent.</summary>
static class TemperatureReader
{
    /// <summary>20 °C, the temperature that a bottle is charged at where nothing else is said.</summary>
    public const double Usual = 293.15;

    /// <summary>The temperature, K; NaN where it is none.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="root">The document.</param>
    /// <param name="charge">The bottle's charge temperature, K; null without a bottle; NaN where it could not be read.</param>
    /// <param name="chargeIsGiven">Whether the document states the charge temperature.</param>
    public static double Read(ReadingContext context, in Members<DocumentField> root, double? charge, bool chargeIsGiven)
    {
        if (root.Has(DocumentField.Temperature)) return QuantityValue.Read(context, root[DocumentField.Temperature], Sizes.Temperature);
        if (charge is { } given && chargeIsGiven)
        {
            if (double.IsFinite(given)) context.Assumptions.Add("/temperature", $"{Celsius(given)}", "the bottle's charge temperature");
            return given;
        }
        context.Assumptions.Add("/temperature", "20 °C", "the usual reference temperature");
        return Usual;
    }

    /// <summary>Whether an agent is answered at a temperature; a fault where not.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="agent">The agent.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="owner">The object whose member the temperature is, or would be.</param>
    /// <param name="member">The member's name.</param>
    /// <param name="element">The temperature, where it is given.</param>
    public static bool Suits(ReadingContext context, Agent agent, double temperature, JsonValue owner, string member, JsonValue element)
    {
        var flaw = temperature < agent.FreezingPoint
            ? $"{agent.Title} freezes at {Celsius(agent.FreezingPoint.Value)}"
            : agent.Covers(temperature) ? null : agent.IsExpanding ? "outside what is answered for " + agent.Title : "outside the data of " + agent.Title;
        if (flaw is null) return true;
        var said = element.ValueKind is JsonValueKind.Undefined ? $"took {Celsius(temperature)}" : $"read {QuantityValue.Shown(element)}";
        context.Faults.Add(owner, member, $"{said}: {flaw}; {Range(agent)} is right");
        return false;
    }

    static string Range(Agent agent)
    {
        var low = Math.Max(agent.LowestTemperature, agent.FreezingPoint ?? 0);
        return double.IsFinite(agent.HighestTemperature)
            ? $"{Celsius(low)} to {Celsius(agent.HighestTemperature)}"
            : $"{Celsius(low)} or more";
    }

    static string Celsius(double kelvin) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{kelvin - 273.15:0.###} °C");
}
