namespace FlowCalc.Discharge;

/// <summary>Why a case has no discharge.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Message">One sentence in words; the finding of the case has the numbers.</param>
public sealed record DischargeFailure(DischargeFailureKind Kind, string Message);
