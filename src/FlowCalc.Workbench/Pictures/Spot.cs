namespace FlowCalc.Workbench.Pictures;

/// <summary>A place on a picture.</summary>
/// <param name="X">From the left edge, points.</param>
/// <param name="Y">From the upper edge, points.</param>
public readonly record struct Spot(double X, double Y);
