using FlowCalc.Limits;

namespace FlowCalc.Api.Answers;

/// <summary>A limit that findings were held against.</summary>
/// <param name="Code">Code of the finding.</param>
/// <param name="Note">From here on a note; null for never.</param>
/// <param name="Warn">From here on a warning; null for never.</param>
/// <param name="Fail">From here on a failure; null for never.</param>
/// <param name="Refuse">From here on a discharge is not answered, and a steady flow counts it as a failure; null for never.</param>
/// <param name="Source">Whose limit it is.</param>
public sealed record LimitAnswer(string Code, Quantity? Note, Quantity? Warn, Quantity? Fail, Quantity? Refuse, string Source)
{
    internal static LimitAnswer Of(Limit limit, UnitWriter write) =>
        new(limit.Code, write.Of(limit.Note), write.Of(limit.Warn), write.Of(limit.Fail), write.Of(limit.Refuse), limit.Source);
}
