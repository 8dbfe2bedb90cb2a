namespace FlowCalc.Layouts.Mounts;

/// <summary>A load case: an acceleration that the mount has to hold.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Acceleration">The acceleration in g, over 0.</param>
/// <param name="Direction">Where the mass is thrown, in the layout's axes, of any length but 0; null for any direction.</param>
public sealed record MountLoad(string Name, double Acceleration, Direction? Direction);
