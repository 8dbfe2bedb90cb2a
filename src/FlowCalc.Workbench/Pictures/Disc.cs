namespace FlowCalc.Workbench.Pictures;

/// <summary>A circle.</summary>
/// <param name="Centre">Its centre.</param>
/// <param name="Radius">Its radius, points.</param>
/// <param name="Fill">Its colour; null for none.</param>
/// <param name="Edge">Colour of its edge; null for none.</param>
/// <param name="EdgeWidth">Width of its edge, points.</param>
public sealed record Disc(Spot Centre, double Radius, Ink? Fill, Ink? Edge = null, double EdgeWidth = 1) : Mark;
