using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Layouts;

namespace FlowCalc.Findings;

/// <summary>What whoever builds from a result has to know beside it.</summary>
public static class Cautions
{
    const string Bottle = "Pressure: a charged bottle whose valve is damaged can fly off with great force; fix it before joining it, keep its caps on until then, and never heat, drill, weld or open it.";
    const string Held = "Pressure: the supply drives every tube and fitting; relieve it before anything is opened, and fix tubes so that none can whip.";
    const string Breathing = "Breathing: propellant or agent let go in a closed space pushes the air aside and can make a person faint unwarned; leave at once and air the space before going back.";
    const string Breakdown = "Breakdown: fire turns agents, additives and what burns into fumes that harm eyes and lungs; see a doctor after exposure.";
    const string Live = "Live circuits: water and agents mixed with it conduct; switch off electrical circuits that the spray can reach before it comes, and reckon with shorts where that cannot be done.";
    const string OwnLiquid = "Live circuits: whether this liquid conducts, burns or harms is not known here; its maker's data sheet comes before anything in this result.";
    const string Occupied = "People: a nozzle in an occupied zone must not be aimed at a person, and noise and spray startle whoever is there.";
    const string Firing = "Firing: every actuator can go off, a coil or a bridgewire; while you work on it keep the source off, its leads joined, the key in your pocket and nobody before a nozzle, and let no more current through it than its test current.";
    /// <summary>That nothing here is an approval or replaces what one would need.</summary>
    public const string Law = "No approval: this is arithmetic and replaces neither the maker's instructions, nor the rules of the sport or class, nor local codes, nor the work of a licensed technician, nor a discharge test.";
    const string Model = "Model: the numbers hold for the layout as written and for clean tube; a test of what was built is the proof.";

    // Two supplies, two sorts of agent, with people or without.
    static readonly ImmutableArray<string>[] Ready = [.. Enumerable.Range(0, 8).Select(Make)];

    /// <summary>The cautions for a layout, each a sentence in plain words.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>The cautions, most urgent first.</returns>
    public static ImmutableArray<string> For(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var isOccupied = false;
        foreach (var zone in layout.Zones) isOccupied |= zone.Occupied;
        var isBottle = layout.Supply is BottleSupply;
        return layout.Agent is ExpandingAgent expanding
            ? [isBottle ? Bottle : Held, .. GasCautions.For(expanding), .. isOccupied ? [Occupied] : ReadOnlySpan<string>.Empty, Law, Model]
            : Ready[(isBottle ? 1 : 0) + (layout.Agent is LiquidAgent { IsConstant: true } ? 2 : 0) + (isOccupied ? 4 : 0)];
    }

    /// <summary>The cautions for a layout's firing circuit.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>That of the circuit before those of the layout.</returns>
    public static ImmutableArray<string> OfCircuit(Layout layout) => [Firing, .. For(layout)];

    static ImmutableArray<string> Make(int which)
    {
        var cautions = ImmutableArray.CreateBuilder<string>();
        cautions.Add((which & 1) != 0 ? Bottle : Held);
        cautions.Add(Breathing);
        cautions.Add(Breakdown);
        cautions.Add((which & 2) != 0 ? OwnLiquid : Live);
        if ((which & 4) != 0) cautions.Add(Occupied);
        cautions.Add(Law);
        cautions.Add(Model);
        return cautions.ToImmutable();
    }
}
