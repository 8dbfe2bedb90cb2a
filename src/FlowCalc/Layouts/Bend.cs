using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A bend formed in a tube.</summary>
/// <param name="Angle">Change of direction, over 0 to 180°.</param>
/// <param name="Radius">Radius of the centre line, over 0.</param>
/// <param name="Count">Equal bends, 1 or more.</param>
public sealed record Bend(Angle Angle, Length Radius, int Count)
{
    /// <summary>Length of the centre lines of all its arcs.</summary>
    public Length Arcs => Length.FromMeters(Angle.Radians * Radius.Meters * Count);
}
