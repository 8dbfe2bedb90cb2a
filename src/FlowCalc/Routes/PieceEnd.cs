using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>An end of a piece of tube, in the fitting that it goes into.</summary>
/// <param name="Fitting">Id of the point, or name or kind of the fitting in the run.</param>
/// <param name="IsPoint">Whether the fitting stands at a point of the layout; else it is one within the run.</param>
/// <param name="Insertion">How deep the tube goes in from the fitting's face: where to mark it; null where not known.</param>
/// <param name="Allowance">Tube beyond the place of the point or fitting; negative where it stops short of the centre.</param>
/// <param name="IsKnown">Whether the document says where the tube stops.</param>
/// <param name="Straight">Straight tube from this end to the first bend; the whole piece where it has none that is placed.</param>
/// <param name="Room">Straight tube that is left for the nut: <paramref name="Straight"/> less insertion and what the fitting grips besides; null where no bend follows.</param>
public sealed record PieceEnd(string Fitting, bool IsPoint, Length? Insertion, Length Allowance, bool IsKnown, Length Straight, Length? Room);
