using FlowCalc.Agents;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>What an application asks of a discharge where the document does not say.</summary>
public static class ApplicationRequirement
{
    /// <summary>The rule of competition vehicles.</summary>
    public const string MotorsportSource =
        "FIA Formula One technical regulations, article 14.1.4, an older edition seen second-hand: 95 % of the contents in 10 s to 30 s; another class may ask for something else";

    const string MarineHalocarbon = "IMO MSC/Circ.848, paragraph 4: 95 % of the design concentration in 10 s, taken here as 95 % of the contents";
    const string MarineInert = "IMO MSC/Circ.848, paragraph 4: 85 % of the design concentration in 120 s, taken here as 85 % of the contents";
    const string MarineCarbonDioxide = "FSS Code, chapter 5 (seen in training notes): 85 % of the gas in 2 min";
    const string RoomHalocarbon = "ISO 14520-1 (from memory): 95 % of the design quantity in 10 s, taken here as 95 % of the contents";
    const string RoomInert = "ISO 14520-1 (from memory): 95 % of the design quantity in 60 s, the stricter figure, taken here as 95 % of the contents";
    const string RoomCarbonDioxide = "NFPA 12 (from memory): the design concentration within 1 min for a surface fire, taken here as 95 % of the contents";

    /// <summary>The default.</summary>
    /// <param name="application">The application.</param>
    /// <param name="agent">The agent.</param>
    /// <returns>Null where none is known.</returns>
    public static Requirement? Of(Application application, Agent agent)
    {
        ArgumentNullException.ThrowIfNull(agent);
        return Find(application, agent)?.Requirement;
    }

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
    public static string? SourceOf(Application application, Agent agent)
    {
        ArgumentNullException.ThrowIfNull(agent);
        return Find(application, agent)?.Source;
    }

    static (Requirement Requirement, string Source)? Find(Application application, Agent agent) => (application, agent) switch
    {
        (Application.Motorsport, _) => (Within(0.95, 30) with { Earliest = Duration.FromSeconds(10) }, MotorsportSource),
        (_, { Kind: AgentKind.Liquid }) => null,
        (Application.MarineEngineSpace, { Id: "carbon-dioxide" }) => (Within(0.85, 120), MarineCarbonDioxide),
        (Application.MarineEngineSpace, { Kind: AgentKind.InertGas }) => (Within(0.85, 120), MarineInert),
        (Application.MarineEngineSpace, _) => (Within(0.95, 10), MarineHalocarbon),
        (Application.ElectricalCabinet, { Id: "carbon-dioxide" }) => (Within(0.95, 60), RoomCarbonDioxide),
        (Application.ElectricalCabinet, { Kind: AgentKind.InertGas }) => (Within(0.95, 60), RoomInert),
        (Application.ElectricalCabinet, _) => (Within(0.95, 10), RoomHalocarbon),
        _ => null,
    };

    static Requirement Within(double part, double seconds) => new(part, true, null, null, Duration.FromSeconds(seconds));
}
