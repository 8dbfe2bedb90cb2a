namespace FlowCalc.Layouts;

/// <summary>A space that the system protects.</summary>
/// <param name="Id">Its name in the document.</param>
/// <param name="Share">Part of the agent that it should get, 0 to 1; null where not given.</param>
/// <param name="Occupied">True where people are in it.</param>
/// <param name="Note">Free text; null for none.</param>
public sealed record Zone(string Id, double? Share, bool Occupied, string? Note);
