using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>Agent that a zone gets, over the cases of the discharge and what the model leaves open in each.</summary>
/// <param name="Least">The least.</param>
/// <param name="LeastCase">Index of the case with the least; null where it is no discharge's.</param>
/// <param name="Most">The most.</param>
/// <param name="MostCase">Index of the case with the most; null where it is no discharge's.</param>
public sealed record MassSpan(Mass Least, int? LeastCase, Mass Most, int? MostCase);
