using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>What an application asks of a discharge where the document does not say.</summary>
/// <param name="Application">Word of the application.</param>
/// <param name="Agents">The agents that it is asked of: <c>any</c>, or the kinds that a liquid is none of: <c>carbon-dioxide</c>, <c>inert</c>, <c>boiling</c>.</param>
/// <param name="Requirement">The requirement.</param>
/// <param name="Source">Whose rule it is, a sentence.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
public sealed record ApplicationRequirement(string Application, string Agents, Requirement Requirement, string Source, ImmutableArray<string> Sources)
{
    /// <summary>All of them.</summary>
    public static ImmutableArray<ApplicationRequirement> All { get; } = [.. CsvTable.Embedded("applications/requirements.csv").Rows.Select(Read)];

    /// <summary>The rule of competition vehicles.</summary>
    public static string MotorsportSource { get; } = All.First(one => one.Application == ApplicationDefaults.Of(Layouts.Application.Motorsport).Id).Source;

    /// <summary>The default.</summary>
    /// <param name="application">The application.</param>
    /// <param name="agent">The agent.</param>
    /// <returns>Null where none is known.</returns>
    public static Requirement? Of(Application application, Agent agent) => Find(application, agent)?.Requirement;

    /// <summary>What a layout's discharge has to do: what its document states, else the default.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>Null where neither says.</returns>
    public static Requirement? For(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return layout.Requirement ?? Of(layout.Application, layout.Agent);
    }

    /// <summary>Whose rule the default is.</summary>
    /// <param name="application">The application.</param>
    /// <param name="agent">The agent.</param>
    /// <returns>A sentence; null where there is no default.</returns>
    public static string? SourceOf(Application application, Agent agent) => Find(application, agent)?.Source;

    static ApplicationRequirement? Find(Application application, Agent agent)
    {
        ArgumentNullException.ThrowIfNull(agent);
        var (word, kind) = (ApplicationDefaults.Of(application).Id, KindOf(agent));
        foreach (var one in All)
            if (one.Application == word && (one.Agents == "any" || one.Agents == kind)) return one;
        return null;
    }

    static string KindOf(Agent agent) => agent switch
    {
        { Kind: AgentKind.Liquid } => "liquid",
        { Id: "carbon-dioxide" } => "carbon-dioxide",
        { Kind: AgentKind.InertGas } => "inert",
        _ => "boiling",
    };

    static ApplicationRequirement Read(CsvRow row) => new(
        row.Text("application"), row.Text("kind"),
        new(row.Number("part_fraction"), true, null, row.OptionalNumber("earliest_s") is { } earliest ? Duration.FromSeconds(earliest) : null, Duration.FromSeconds(row.Number("latest_s"))),
        row.Text("note"), row.Sources);
}
