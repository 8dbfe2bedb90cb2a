using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Layouts;

namespace FlowCalc.Coverage;

/// <summary>What geometry and quantity do not prove, to stand with every coverage.</summary>
public static class CoverageClaims
{
    const string Fire = "Whether a fire goes out: nothing here says that. Only a fire test of the very arrangement does.";
    const string Cone = "How evenly a spray wets: cones are taken as full, straight and sharp at the edge, in still air. Real ones are narrower than stated, thin at the edge, and sink with distance; a mean density is not one that every place gets.";
    const string Wind = "Anything in moving air, on hot surfaces, on fuel that runs, or behind panels that a crash has bent.";
    const string Bodies = "What bodies hide of a surface: the straight way is looked at for targets and persons alone; footprints go on behind bodies.";
    const string Gas = "That a concentration is even, or comes in time: the space is taken as shut and well mixed, its volume as stated, and leaks beyond the agent's own displacement as none.";
    const string Fuel = "That tables fit your fuel: their figures for liquids are those of heptane; blends with alcohol need more, and so may deep fires of solids.";
    const string Local = "That a gas let into the open or into a bay with air through it stays there: where a zone is protected locally, no concentration is claimed.";

    /// <summary>The sentences for a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>One or more.</returns>
    public static ImmutableArray<string> NotProven(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return layout.Agent is ExpandingAgent ? [Fire, Gas, Fuel, Local, Cone, Wind, Bodies] : [Fire, Cone, Wind, Bodies];
    }
}
