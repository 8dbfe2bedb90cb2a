using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Coverage;

/// <summary>What the air of a zone becomes, shut and still; concentrations are parts of the volume.</summary>
/// <param name="Least">Concentration of the least mass at the coldest.</param>
/// <param name="Most">Concentration of the most mass at the hottest.</param>
/// <param name="Hottest">The hottest temperature.</param>
/// <param name="Oxygen">Oxygen that the highest concentration leaves.</param>
/// <param name="Noael">Highest concentration without harm seen; null where none is known.</param>
/// <param name="Loael">Lowest concentration with harm seen; null where none is known.</param>
/// <param name="Allowed">Longest time that anybody may be in it, 0 for not at all; null where no rule is known.</param>
/// <param name="AllowedSource">Whose rule that is; null with the time.</param>
public sealed record ZoneExposureAnswer(double Least, double Most, Quantity Hottest, double Oxygen, double? Noael, double? Loael, Quantity? Allowed, string? AllowedSource);
