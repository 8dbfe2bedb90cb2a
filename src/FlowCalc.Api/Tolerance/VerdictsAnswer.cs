namespace FlowCalc.Api.Tolerance;

/// <summary>How likely each verdict is; the counts add up to the samples.</summary>
/// <param name="Pass">Nothing is found.</param>
/// <param name="Note">The worst finding is a note.</param>
/// <param name="Warn">The worst finding is a warning.</param>
/// <param name="Fail">The worst finding is a failure.</param>
/// <param name="Unsolved">There is no steady flow to judge; see <c>failures</c>. A case of a discharge without an answer is a finding instead.</param>
public sealed record VerdictsAnswer(ChanceAnswer Pass, ChanceAnswer Note, ChanceAnswer Warn, ChanceAnswer Fail, ChanceAnswer Unsolved);
