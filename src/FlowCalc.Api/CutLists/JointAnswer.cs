using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>An end of a piece, in the fitting that it goes into.</summary>
/// <param name="Fitting">Id of the point, or name or kind of the fitting within the run.</param>
/// <param name="Insertion">How deep the tube goes in from the fitting's face: where to mark it; null where not known.</param>
/// <param name="Allowance">Tube beyond the place of the point or fitting; negative where it stops short of the centre. It is in the cut length.</param>
/// <param name="Known">Whether the document says where the tube stops; else a default was taken.</param>
/// <param name="Straight">Straight tube from this end to the first bend; the whole piece where no bend has a place in it.</param>
public sealed record JointAnswer(string Fitting, Quantity? Insertion, Quantity Allowance, bool Known, Quantity Straight);
