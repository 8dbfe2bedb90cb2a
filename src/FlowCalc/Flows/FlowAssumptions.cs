using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;

namespace FlowCalc.Flows;

/// <summary>What the steady flow takes for granted beside what the reader filled in.</summary>
internal static class FlowAssumptions
{
    /// <summary>The layout's assumptions, then those of the solve.</summary>
    /// <param name="layout">The layout.</param>
    public static ImmutableArray<Assumption> Of(Layout layout)
    {
        var agent = layout.Agent as ExpandingAgent;
        if (agent is null && layout.Supply is not BottleSupply) return layout.Assumptions;
        const string at = "/supply/bottle";
        var list = layout.Assumptions.ToBuilder();
        if (agent is not null) list.AddRange(ExpandingAssumptions.Of(layout, agent));
        if (layout.Supply is not BottleSupply { Bottle: var bottle }) return list.ToImmutable();
        if (agent is null) list.Add(new(at, $"pressure at the asked temperature: {BottlePressure.Statement}", "property data of the gas"));
        list.Add(new(at, "the start of the discharge, with every line full: pressure and flow fall from there; the head between liquid and outlet is left out", "steady flow of one instant"));
        if (bottle.Outlet is { } outlet)
        {
            if (outlet.DipTube is not null) list.Add(new($"{at}/outlet/dipTube", "square-cut inlet, K = 0.57", "Rennels and Hudson, Pipe Flow, 2012, as given in the open library fluids"));
            if (outlet.Regulator is not null) list.Add(new($"{at}/outlet/regulator", "the last part of the outlet; holds its set pressure while the bottle can deliver it, else stands fully open", "common practice, no source"));
            if (outlet.Restrictor is not null) list.Add(new($"{at}/outlet/restrictor", "none of the orifice's pressure drop is recovered", "on the safe side"));
        }
        return list.ToImmutable();
    }
}
