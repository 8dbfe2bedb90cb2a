using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Agents;

namespace FlowCalc.Findings;

/// <summary>What whoever lets a gas or a liquefied gas go has to know of it.</summary>
public static class GasCautions
{
    const string Never = "Breathing: carbon dioxide at what it takes to put a fire out kills within breaths; it is never let go where a person can be, and nobody goes back in before the space is aired and measured.";
    const string Suffocation = "Breathing: the agent pushes the air aside and can make a person faint unwarned; leave at once, air the space, and look only then.";
    const string Acid = "Breakdown: in flame the agent turns to hydrogen fluoride, which harms eyes and lungs at a few millionths of the air; the longer the fire and the slower the discharge, the more. Wash skin and see a doctor after any exposure.";
    const string Fumes = "Breakdown: what burns makes fumes that harm eyes and lungs; see a doctor after exposure.";
    const string Cold = "Cold and jet: the agent comes out far below freezing and freezes skin and eyes; the jet throws what lies in its way, and its noise hurts ears and startles a driver.";
    const string Live = "Live circuits: the agent does not conduct, but what arcs or glows lights the fire again as soon as it thins out; switch off circuits, fuel and fans before it comes.";

    /// <summary>The cautions of an agent, each a sentence in plain words.</summary>
    /// <param name="agent">The agent.</param>
    /// <returns>The cautions, most urgent first.</returns>
    public static ImmutableArray<string> For(ExpandingAgent agent)
    {
        ArgumentNullException.ThrowIfNull(agent);
        var isHalocarbon = agent.Kind != AgentKind.InertGas && agent.Id != "carbon-dioxide";
        return agent.People == "never" ? [Never, Fumes, Cold, Live] : [Exposure(agent), Suffocation, isHalocarbon ? Acid : Fumes, Cold, Live];
    }

    static string Exposure(ExpandingAgent agent)
    {
        var unharmed = Percent(agent.HighestUnharmed!.Value);
        var harmful = agent.LowestHarmful is { } lowest ? $", and {Percent(lowest)} of it in the air is the lowest level at which harm was seen" : "";
        return agent.People switch
        {
            "no" => $"People: {agent.Title} is for spaces without people: no harm was seen only up to {unharmed} of it in the air{harmful}, less than it takes to put out most fires of liquids.",
            "oxygen" => $"People: up to {unharmed} of {agent.Title} in the air leave 12 % of oxygen, and over {Percent(agent.LowestHarmful!.Value)} leave 10 %: nobody stays in it, and over the first figure everybody is out before it comes.",
            _ => $"People: no harm was seen up to {unharmed} of {agent.Title} in the air{harmful}; whether a space stays below at its warmest has to be worked out before people may be in it.",
        };
    }

    static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{100 * part:0.#} %");
}
