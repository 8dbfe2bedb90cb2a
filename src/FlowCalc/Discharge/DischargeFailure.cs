namespace FlowCalc.Discharge;

/// <summary>Why a case has no discharge.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Message">One sentence with the numbers, in SI or metric units.</param>
public sealed record DischargeFailure(DischargeFailureKind Kind, string Message);
