namespace FlowCalc.Api.Answers;

/// <summary>A number of an answer is not finite, so that there is no answer.</summary>
/// <param name="what">What the number is.</param>
internal sealed class NotFiniteException(string what) : Exception($"The {what} came out as a number that is not finite, so there is no answer to give. The sizes or pressures of the layout may be too far apart.");
