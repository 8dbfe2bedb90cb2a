using FlowCalc.Agents;
using FlowCalc.Layouts;

namespace FlowCalc.Flows;

/// <summary>What the model of a gas or a liquefied gas takes for granted, how far it was checked and how far to trust it.</summary>
internal static class ExpandingAssumptions
{
    const string Memory = "from memory";

    /// <summary>The assumptions of flow and discharge alike.</summary>
    /// <param name="layout">A layout of such an agent.</param>
    /// <param name="agent">The agent.</param>
    public static IEnumerable<Assumption> Of(Layout layout, ExpandingAgent agent)
    {
        if (agent.Kind == AgentKind.InertGas)
        {
            yield return new("/agent", "a real gas at constant enthalpy in tubes and constant entropy in nozzles, choked where it reaches the speed of sound; within 2 % of the exact choked flow through a tube (compared with Fanno flow)",
                "equations of state of the catalogue");
            if (agent.Id.StartsWith("IG-", StringComparison.Ordinal))
                yield return new("/agent", "a blend that mixes as its components' common equation says, the departure function left out: within 2 to 5 % of adding the components' volumes at 40 °C", "O. Kunz, W. Wagner (2012), reducing parameters");
        }
        else
        {
            yield return new("/agent", "liquid and vapour at one speed and in equilibrium in tubes; checked against worked expansion paths and solved trees, not against measured nozzle pressures, of which no open set with its geometry was found for this agent: the pressure gradient of such flow is known to 20 to 30 %",
                $"homogeneous equilibrium model, viscosity after McAdams 1942 ({Memory})");
            yield return new("/model/nozzles", $"{FlowBand.Words(layout.NozzleModel)}; the band holds the other two", $"R. Diener, J. Schmidt 2004 ({Memory}); measured flows of saturated carbon dioxide through a short orifice lie between one and two times the equilibrium's");
            yield return new("/points", "tees divide liquid and vapour alike; the band has 0.7 and 1.4 of that at every side branch", "common practice, no source");
        }
        if (agent.Kind == AgentKind.LiquefiedUnderNitrogen)
            yield return new("/supply", $"nitrogen dissolved by Henry's law with a constant that does not change with temperature: bottle pressures to about {(agent.IsWeak ? "10" : "5")} % from 0 to 50 °C, the nitrogen's mass to {(agent.IsWeak ? "50" : "25")} %",
                agent.IsWeak ? "own estimate, no measurement was at hand" : $"held against ISO 14520-9 ({Memory})");
        if (layout.Supply is BottleSupply { Bottle.Outlet: { } outlet } && (outlet.ValveKv is not null || outlet.Restrictor is not null || outlet.Regulator?.Kv is not null))
            yield return new("/supply/bottle/outlet", "valve, restrictor and open regulator count as losses and do not choke: where they are tighter than the first tube the flow told is too great", "simplification");
    }
}
