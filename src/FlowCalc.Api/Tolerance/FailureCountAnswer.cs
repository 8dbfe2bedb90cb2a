namespace FlowCalc.Api.Tolerance;

/// <summary>Why samples have no answer.</summary>
/// <param name="Reason">Why.</param>
/// <param name="Samples">How many.</param>
public sealed record FailureCountAnswer(string Reason, int Samples);
