using System.Collections.Immutable;

namespace FlowCalc.Quantities;

/// <summary>One row of the closed table of units: SI value = value × <see cref="Factor"/> + <see cref="Offset"/>.</summary>
/// <param name="Kind">What the unit measures.</param>
/// <param name="Symbol">The main spelling, used in answers.</param>
/// <param name="Twins">Other spellings that are read as the same unit; never the main one.</param>
/// <param name="Factor">SI base units in one of this unit, over 0.</param>
/// <param name="Offset">SI value at zero of this unit; 0 except for temperatures.</param>
/// <param name="IsAbsolute">Pressures only: whether the unit says absolute (true) or stands for gauge (false). Null for every other kind.</param>
public sealed record UnitEntry(
    QuantityKind Kind,
    string Symbol,
    ImmutableArray<string> Twins,
    double Factor,
    double Offset,
    bool? IsAbsolute)
{
    /// <summary>SI base units in one of this unit, over 0. Fixed when the row is made, since the conversion below depends on it.</summary>
    public double Factor { get; } = Factor;

    // A submultiple such as the millimetre has no exact binary factor but a whole divisor. One division by 1000 is
    // rounded once; a product with the double nearest to 0.001 is rounded twice, and 9 mm would miss 0.009.
    readonly double divisor = WholeDivisor(Factor);

    /// <summary>Converts a value in this unit to the SI base unit.</summary>
    internal double ToSi(double value) => (divisor > 0 ? value / divisor : value * Factor) + Offset;

    /// <summary>Converts an SI value to this unit, to within two units in the last place.</summary>
    internal double FromSi(double si) => divisor > 0 ? (si - Offset) * divisor : (si - Offset) / Factor;

    static double WholeDivisor(double factor)
    {
        var whole = Math.Round(1.0 / factor);
        return factor < 1.0 && Math.Abs(whole * factor - 1.0) <= 4e-16 ? whole : 0.0;
    }
}
