using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>One change of a layout, to be tried.</summary>
/// <param name="Change">What is changed, by id.</param>
/// <param name="Words">The change in words, such as <c>feed instead of drop in R11</c>.</param>
/// <param name="Changed">The layout with it.</param>
/// <param name="Length">Tube to replace, m; 0 where only a part is exchanged.</param>
/// <param name="Step">Change of bore, m, without sign; 0 where no tube is exchanged.</param>
/// <param name="Doubt">Why it may not be buildable as it stands; null for no doubt.</param>
sealed record LayoutChange(CureChange Change, string Words, Layout Changed, double Length, double Step, string? Doubt);
