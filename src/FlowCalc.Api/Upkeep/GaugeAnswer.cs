using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Upkeep;

/// <summary>What the bottle's gauge shows. Pressures are gauge.</summary>
/// <param name="Temperature">The temperature that is asked for; null where none is.</param>
/// <param name="Expected">What a sound bottle shows at that temperature; null where none is asked for or there is none to tell.</param>
/// <param name="Failure">Why there is none to tell; null where there is.</param>
/// <param name="Lowest">The pressure below which too much is lost at that temperature; null where none is expected, and of a gas that is liquefied alone, whose gauge does not show that.</param>
/// <param name="ExpectedInGreen">Whether the expected pressure lies in the green of the dial; null where either is not known.</param>
/// <param name="Read">What was read, as the document has it; null where it has no reading.</param>
/// <param name="ReadTemperature">Temperature of the bottle then.</param>
/// <param name="ExpectedThen">What a sound bottle shows at that temperature.</param>
/// <param name="Lost">How far the reading is below that, as a part of it; under 0 where it is above.</param>
/// <param name="ReadInGreen">Whether the reading lies in the green of the dial; null where either is not known.</param>
public sealed record GaugeAnswer(
    Quantity? Temperature, Quantity? Expected, string? Failure, Quantity? Lowest, bool? ExpectedInGreen, Quantity? Read, Quantity? ReadTemperature, Quantity? ExpectedThen, double? Lost, bool? ReadInGreen);
