namespace FlowCalc.Studies.Sizing;

/// <summary>What comes of a wish with one requirement left out.</summary>
/// <param name="Requirement">Which.</param>
/// <param name="Choice">The choice that meets the others and comes nearest to it; null where none was found.</param>
/// <param name="Best">How far it comes: a part for the deviation, absolute Pa for the pressure, s for the time; NaN where none was found.</param>
public sealed record SizingRelaxation(SizingRequirement Requirement, SizedChoice? Choice, double Best);
