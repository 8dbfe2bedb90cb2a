using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Studies.Sizing;

/// <summary>What is in the way of a wish, in a sentence.</summary>
public static class SizingWords
{
    /// <summary>The sentence.</summary>
    /// <param name="requirement">The requirement that was left out or lowered.</param>
    /// <param name="wish">The wish.</param>
    /// <param name="best">How near the others let a choice come to it: a part, s, or gauge Pa; null where that is not known.</param>
    /// <param name="wished">What was wished in the same measure.</param>
    /// <param name="isFound">Whether a choice was found without it.</param>
    /// <param name="units">The units to write in.</param>
    public static string Of(SizingRequirement requirement, SizingWish wish, double? best, double wished, bool isFound, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(wish);
        if (!isFound) return $"without {Word(requirement)} nothing was found that meets the rest of the wish either";
        return requirement switch
        {
            SizingRequirement.Deviation => $"the rest of the wish can be met; the worst nozzle is then {Wording.Percent(best ?? double.NaN, wished)} off its share, wished are {Wording.Percent(wished)}",
            SizingRequirement.LeastPressure =>
                $"the rest of the wish can be met; the least pressure at a nozzle is then {Wording.Of(best ?? double.NaN, wished, QuantityKind.Pressure, units)}, wished are {Wording.Of(wished, QuantityKind.Pressure, units)}",
            _ => best is { } time
                ? $"the rest of the wish can be met; the shortest time found in the slowest case is then {Wording.Of(time, QuantityKind.Time, units)}, wished are {Window(wish, units)}"
                : $"the rest of the wish can be met, but a case never gets the required part out; wished are {Window(wish, units)}",
        };
    }

    static string Word(SizingRequirement requirement) => requirement switch
    {
        SizingRequirement.Deviation => "the deviation",
        SizingRequirement.LeastPressure => "the least pressure",
        _ => "the time",
    };

    static string Window(SizingWish wish, UnitSystem units) => (wish.Earliest, wish.Latest) switch
    {
        ({ } earliest, { } latest) => $"{Wording.Of(earliest.Seconds, QuantityKind.Time, units)} to {Wording.Of(latest.Seconds, QuantityKind.Time, units)}",
        (null, { } latest) => $"{Wording.Of(latest.Seconds, QuantityKind.Time, units)} at most",
        ({ } earliest, null) => $"{Wording.Of(earliest.Seconds, QuantityKind.Time, units)} at least",
        _ => "no time",
    };
}
