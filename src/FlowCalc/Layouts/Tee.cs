using FlowCalc.Losses;

namespace FlowCalc.Layouts;

/// <summary>A tee: one run in, two out.</summary>
/// <param name="Id">Its name in the document, unique among points.</param>
/// <param name="At">Where it is; null where not given.</param>
/// <param name="Note">Free text; null for none.</param>
/// <param name="FedThrough">The port that the flow comes in by; the branch makes it a bullhead.</param>
/// <param name="Body">How it is made; null where not given, then it counts as smooth and the answer says so.</param>
public sealed record Tee(string Id, Place? At, string? Note, TeePort FedThrough, TeeBody? Body) : LayoutPoint(Id, At, Note);
