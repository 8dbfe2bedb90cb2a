using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>The temperatures that some data reach.</summary>
/// <param name="Lowest">Lowest temperature.</param>
/// <param name="Highest">Highest temperature.</param>
public sealed record TemperatureRange(Quantity Lowest, Quantity Highest);
