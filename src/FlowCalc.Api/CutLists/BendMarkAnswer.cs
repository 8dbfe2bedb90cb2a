using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>A bend of a piece.</summary>
/// <param name="At">Where the arc begins, from the piece's start; a bender's own offset is not in it.</param>
/// <param name="Angle">Change of direction.</param>
/// <param name="Radius">Radius of the centre line.</param>
/// <param name="Rotation">From the plane of the bend before it to its own, over -180° to 180°, right-handed from the start on; null for the first of a piece.</param>
/// <param name="Setback">From the corner of the two straights back to where the arc begins.</param>
/// <param name="Arc">Length of the arc.</param>
/// <param name="Gain">How much shorter the arc is than the way round the corner.</param>
public sealed record BendMarkAnswer(Quantity At, Quantity Angle, Quantity Radius, Quantity? Rotation, Quantity Setback, Quantity Arc, Quantity Gain);
