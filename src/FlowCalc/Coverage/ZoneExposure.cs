using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>What the air of a zone becomes, in still air and with the space shut.</summary>
/// <param name="Least">Concentration of the least mass at the coldest, part of the volume.</param>
/// <param name="Most">Concentration of the most mass at the hottest.</param>
/// <param name="Hottest">The hottest temperature.</param>
/// <param name="Oxygen">Oxygen that the highest concentration leaves, part of the volume.</param>
/// <param name="Unharmed">Highest concentration without harm seen (NOAEL); null where none is known.</param>
/// <param name="Harmful">Lowest concentration with harm seen (LOAEL); null where none is known.</param>
/// <param name="Allowed">Longest time that anybody may be in it; 0 for not at all; null where no rule is known.</param>
/// <param name="AllowedSource">Whose rule that is; null with the time.</param>
public sealed record ZoneExposure(double Least, double Most, Temperature Hottest, double Oxygen, double? Unharmed, double? Harmful, Duration? Allowed, string? AllowedSource);
