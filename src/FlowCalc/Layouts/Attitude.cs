namespace FlowCalc.Layouts;

/// <summary>A way in which the system stands or is shaken.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Gravity">Gravity less the acceleration of the frame, in g; standing upright 0, 0, −1.</param>
public sealed record Attitude(string Name, Direction Gravity);
