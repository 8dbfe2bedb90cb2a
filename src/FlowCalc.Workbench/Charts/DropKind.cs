using FlowCalc.Flows;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Charts;

/// <summary>A kind of pressure drop, as charts and reports tell it apart.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="Hatch">How it is hatched, so that it is told apart without colour.</param>
/// <param name="Of">Its part of a drop, Pa; negative where it gives pressure back.</param>
public sealed record DropKind(string Name, Ink Ink, Hatch Hatch, Func<LossBreakdown, double> Of)
{
    /// <summary>All kinds, in the order of the way from the bottle.</summary>
    public static IReadOnlyList<DropKind> All { get; } =
    [
        new("bottle's outlet", Ink.Kind5, Hatch.None, drop => drop.Outlet.Pascals),
        new("straight tube", Ink.Kind1, Hatch.None, drop => drop.Tube.Pascals),
        new("bends", Ink.Kind7, Hatch.Rising, drop => drop.Bends.Pascals),
        new("tees", Ink.Kind2, Hatch.Falling, drop => drop.Tees.Pascals),
        new("fittings", Ink.Kind3, Hatch.Upright, drop => drop.Fittings.Pascals),
        new("steps in bore", Ink.Kind4, Hatch.Level, drop => drop.BoreChanges.Pascals),
        new("rise", Ink.Kind6, Hatch.Crossed, drop => drop.Rise.Pascals),
    ];
}
