using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Upkeep;

/// <summary>What a weighing says of the agent.</summary>
/// <param name="Stamped">Gross mass of the full bottle.</param>
/// <param name="Gross">Gross mass that was found.</param>
/// <param name="Lost">Agent lost, as a part of the fill; under 0 where the bottle is heavier.</param>
/// <param name="Doubt">The step of the scale as a part of the fill; null where not given.</param>
public sealed record WeightAnswer(Quantity Stamped, Quantity Gross, double Lost, double? Doubt);
