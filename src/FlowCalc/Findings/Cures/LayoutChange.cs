using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>One change of a layout, to be tried.</summary>
/// <param name="Changes">What is changed in the document: all of it together is the one change.</param>
/// <param name="Words">The change in words, such as <c>feed instead of drop in R11</c>.</param>
/// <param name="Changed">The layout with it, as the changed document reads.</param>
/// <param name="Length">Tube to replace, m; 0 where only a part is exchanged.</param>
/// <param name="Step">How far the size moves: the logarithm of the ratio, without sign; 0 where no size moves.</param>
/// <param name="Doubt">Why it may not be buildable as it stands; null for no doubt.</param>
sealed record LayoutChange(ImmutableArray<CureChange> Changes, string Words, Layout Changed, double Length, double Step, string? Doubt)
{
    /// <summary>What names the change: equal changes have equal keys.</summary>
    public string Key { get; } = string.Join('\n', Changes.Select(change => $"{change.Path}\t{change.To?.Json}"));

    /// <summary>How far a size moves.</summary>
    public static double StepOf(double from, double to) => Math.Abs(Math.Log(to / from));
}
