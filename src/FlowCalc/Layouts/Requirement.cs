using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>How much has to leave the nozzles in which time.</summary>
/// <param name="Part">Part of the contents or of the quantity, over 0 to 1.</param>
/// <param name="OfContents">True for a part of the contents, false for a part of <paramref name="Quantity"/>.</param>
/// <param name="Quantity">Mass asked for; null with the contents.</param>
/// <param name="Earliest">Shortest time allowed; null for none.</param>
/// <param name="Latest">Longest time allowed; null for none.</param>
public sealed record Requirement(double Part, bool OfContents, Mass? Quantity, Duration? Earliest, Duration? Latest);
