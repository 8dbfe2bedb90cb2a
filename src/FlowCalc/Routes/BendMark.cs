using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Where and how a piece of tube is bent.</summary>
/// <param name="At">Where the arc begins, from the first end of the finished piece; a bender's own offset is not in it.</param>
/// <param name="Angle">Change of direction.</param>
/// <param name="Radius">Radius of the centre line.</param>
/// <param name="Rotation">From the plane of the bend before it to its own, about the straight between them, over −180° to 180°; right-handed from the first end on. Null for the first of a piece.</param>
public sealed record BendMark(Length At, Angle Angle, Length Radius, Angle? Rotation)
{
    /// <summary>From the corner of the two lines back to where the arc begins: R·tan(θ/2).</summary>
    public Length Setback => Length.FromMeters(Radius.Meters * Math.Tan(Angle.Radians / 2));

    /// <summary>Length of the arc: R·θ.</summary>
    public Length Arc => Length.FromMeters(Radius.Meters * Angle.Radians);

    /// <summary>How much shorter the arc is than the way round the corner: two setbacks less the arc.</summary>
    public Length Gain => 2 * Setback - Arc;
}
