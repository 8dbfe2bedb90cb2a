namespace FlowCalc.Api.Size;

/// <summary>What a search took.</summary>
/// <param name="Choices">All combinations of free sizes.</param>
/// <param name="Solves">Combinations whose flow was solved.</param>
/// <param name="Discharges">Combinations whose discharge was followed.</param>
/// <param name="Work">Work after which the search would have ended, in solves.</param>
public sealed record SizeSearchAnswer(double Choices, int Solves, int Discharges, int Work);
