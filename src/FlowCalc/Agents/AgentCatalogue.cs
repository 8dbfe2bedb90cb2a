using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>The agents that the library knows, with their sources.</summary>
public static class AgentCatalogue
{
    static readonly FrozenDictionary<string, LiquidAgent> LiquidsById;
    static readonly FrozenDictionary<string, Mixture> MixturesById;
    static readonly FrozenDictionary<string, ExpandingAgent> ExpandingById;

    static AgentCatalogue()
    {
        Liquids = [.. CsvTable.Embedded("agents/liquids.csv").Rows.Select(ReadLiquid)];
        LiquidsById = Liquids.ToFrozenDictionary(agent => agent.Id, StringComparer.Ordinal);
        Expanding = ExpandingAgent.ReadAll();
        ExpandingById = Expanding.ToFrozenDictionary(agent => agent.Id, StringComparer.Ordinal);
        ImmutableArray<Mixture> mixtures = [.. Mixture.ReadAll()];
        Mixtures = [.. mixtures.Select(mixture => mixture.Info)];
        MixturesById = mixtures.ToFrozenDictionary(mixture => mixture.Info.Id, StringComparer.Ordinal);
    }

    /// <summary>Liquids named by an id alone.</summary>
    public static ImmutableArray<LiquidAgent> Liquids { get; }

    /// <summary>Mixtures named by an id and a mass fraction.</summary>
    public static ImmutableArray<MixtureInfo> Mixtures { get; }

    /// <summary>Gases and liquefied gases named by an id alone.</summary>
    public static ImmutableArray<ExpandingAgent> Expanding { get; }

    /// <summary>Ids of all agents that are named by an id alone: liquids, then gases and liquefied gases.</summary>
    public static ImmutableArray<string> Ids => [.. Liquids.Select(agent => agent.Id), .. Expanding.Select(agent => agent.Id)];

    /// <summary>The liquid of an id.</summary>
    /// <param name="id">Id; case counts.</param>
    /// <returns>The agent, or null where no liquid has that id.</returns>
    public static LiquidAgent? Find(string id) => LiquidsById.GetValueOrDefault(id);

    /// <summary>The gas or liquefied gas of an id.</summary>
    /// <param name="id">Id; case counts.</param>
    /// <returns>The agent, or null where none has that id.</returns>
    public static ExpandingAgent? FindExpanding(string id) => ExpandingById.GetValueOrDefault(id);

    /// <summary>The agent of one strength of a mixture.</summary>
    /// <param name="mixture">Id of the mixture; case counts.</param>
    /// <param name="massFraction">Additive in the mass of the whole, dimensionless, in the range that the mixture's entry states.</param>
    /// <param name="agent">The agent; its data start at its freezing point.</param>
    /// <param name="fault">Where it fails: a sentence with what was read and what would be right.</param>
    /// <returns>Whether there is such an agent.</returns>
    public static bool TryMixture(
        string mixture, double massFraction, [NotNullWhen(true)] out LiquidAgent? agent, [NotNullWhen(false)] out string? fault)
    {
        (agent, fault) = (null, null);
        if (!MixturesById.TryGetValue(mixture, out var found))
            fault = $"There is no mixture '{mixture}'. Known: {string.Join(", ", Mixtures.Select(known => known.Id))}.";
        else if (!found.Covers(massFraction))
            fault = string.Create(CultureInfo.InvariantCulture, $"The data of {mixture} run from mass fraction {found.Info.LowestMassFraction} to {found.Info.HighestMassFraction}; {massFraction} lies outside.");
        else
            agent = found.At(massFraction);
        return fault is null;
    }

    static LiquidAgent ReadLiquid(CsvRow row) => new(
        row.Text("id"), row.Text("title"), row.Number("freezing_point_c") + 273.15, row.OptionalText("note"), row.Sources, WaterProperties.Instance);
}
