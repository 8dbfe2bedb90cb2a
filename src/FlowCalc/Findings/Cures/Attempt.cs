namespace FlowCalc.Findings.Cures;

/// <summary>A change that was solved.</summary>
/// <param name="Change">The change.</param>
/// <param name="Judged">The changed layout with its answer.</param>
/// <param name="Found">What the rules find in it.</param>
sealed record Attempt(LayoutChange Change, JudgedLayout Judged, FindingList Found);
