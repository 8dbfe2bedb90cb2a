using FlowCalc.Quantities;

namespace FlowCalc.Limits;

/// <summary>From where on a finding is a note, a warning or a failure. A null step never happens.</summary>
/// <param name="Code">The finding's code.</param>
/// <param name="Note">From here on a note.</param>
/// <param name="Warn">From here on a warning.</param>
/// <param name="Fail">From here on a failure.</param>
/// <param name="Refuse">From here on a discharge is not answered; a steady flow counts it as a failure.</param>
/// <param name="Source">Whose limit it is.</param>
public sealed record Limit(string Code, Measure? Note, Measure? Warn, Measure? Fail, Measure? Refuse, string Source);
