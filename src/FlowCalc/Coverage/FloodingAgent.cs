using System.Collections.Frozen;
using FlowCalc.Agents;
using FlowCalc.Layouts.Coverage;
using FlowCalc.ReferenceData;

namespace FlowCalc.Coverage;

/// <summary>What flooding needs to know of an agent.</summary>
public sealed class FloodingAgent
{
    const double Standard = 101_325, Zero = 273.15;

    static readonly FrozenDictionary<string, CsvRow> Rows = CsvTable.Embedded("agents/flooding.csv").Rows.ToFrozenDictionary(row => row.Text("id"), StringComparer.Ordinal);

    readonly double k1, k2;

    FloodingAgent(ExpandingAgent agent, CsvRow row)
    {
        Agent = agent;
        (ClassA, ClassB) = (row.OptionalNumber("class_a_percent") / 100, row.OptionalNumber("class_b_percent") / 100);
        (k1, k2) = (row.Number("specific_volume_m3_kg"), row.Number("specific_volume_slope_m3_kg_k"));
        Source = string.Join("; ", row.Sources.Select(key => SourceCatalogue.Find(key) is { } source ? source.Title : key)) + (row.OptionalText("note") is { } note ? $" ({note.TrimEnd('.')})" : "");
    }

    /// <summary>The agent.</summary>
    public ExpandingAgent Agent { get; }

    /// <summary>Least design concentration for solids that burn at their surface, 0 to 1; null where not known.</summary>
    public double? ClassA { get; }

    /// <summary>Least design concentration for heptane and what burns like it, 0 to 1; null where not known.</summary>
    public double? ClassB { get; }

    /// <summary>Whose figures these are.</summary>
    public string Source { get; }

    /// <summary>Whether the mixture leaves the space while the agent comes in, as with much gas, or only what it displaced.</summary>
    public bool IsGas => Agent.Kind == AgentKind.InertGas || Agent.People == "never";

    /// <summary>The agent's figures.</summary>
    /// <param name="agent">An agent.</param>
    /// <returns>Null for a liquid, which makes no concentration.</returns>
    public static FloodingAgent? Of(Agent agent) => agent is ExpandingAgent expanding && Rows.TryGetValue(expanding.Id, out var row) ? new(expanding, row) : null;

    /// <summary>The design concentration of a hazard, 0 to 1.</summary>
    /// <param name="hazard">What would burn.</param>
    /// <returns>Null where the table has none.</returns>
    public double? DesignFor(Hazard hazard) => hazard switch { Hazard.ClassA => ClassA, Hazard.ClassB => ClassB, _ => null };

    /// <summary>Specific volume of the agent's vapour.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure of the space, Pa.</param>
    /// <returns>s = (k₁ + k₂·t)·p₀/p, t in °C, m³/kg.</returns>
    public double SpecificVolume(double temperature, double pressure) => (k1 + k2 * (temperature - Zero)) * Standard / pressure;

    /// <summary>Mass that makes a concentration, kg.</summary>
    /// <param name="volume">Net volume, m³.</param>
    /// <param name="concentration">Concentration, 0 to under 1.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure of the space, Pa.</param>
    public double Mass(double volume, double concentration, double temperature, double pressure)
    {
        var specific = SpecificVolume(temperature, pressure);
        return IsGas ? Flooding.InertMass(volume, specific, concentration) : Flooding.HalocarbonMass(volume, specific, concentration);
    }

    /// <summary>Concentration that a mass makes, 0 to 1.</summary>
    /// <param name="volume">Net volume, m³.</param>
    /// <param name="mass">Mass, kg.</param>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure of the space, Pa.</param>
    public double Concentration(double volume, double mass, double temperature, double pressure)
    {
        var specific = SpecificVolume(temperature, pressure);
        return IsGas ? Flooding.InertConcentration(volume, specific, mass) : Flooding.HalocarbonConcentration(volume, specific, mass);
    }
}
