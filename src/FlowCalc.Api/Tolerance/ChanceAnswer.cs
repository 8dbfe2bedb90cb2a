namespace FlowCalc.Api.Tolerance;

/// <summary>How likely something is.</summary>
/// <param name="Count">Samples in which it was so.</param>
/// <param name="Part">Their part of all, 0 to 1.</param>
/// <param name="Low">Lower end of the chance with a confidence of 95 % (Wilson), 0 to 1.</param>
/// <param name="High">Upper end, 0 to 1.</param>
public sealed record ChanceAnswer(int Count, double Part, double Low, double High);
