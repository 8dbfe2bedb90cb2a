using System.Globalization;

namespace FlowCalc.Quantities;

/// <summary>Writes SI values in the units of a system; the units are rows of <see cref="UnitTable"/>, so what is written can be read.</summary>
/// <remarks>
/// Units, metric / us / si: length m, ft, m; area m2, ft2, m2; volume L, US gal, m3; pressure (gauge) bar, psi, Pa; mass kg, lb, kg; density kg/m3, lb/ft3, kg/m3;
/// volume flow L/min, US gal/min, m3/s; mass flow kg/s, lb/s, kg/s; K-factor L/min/bar^0.5, US gal/min/psi^0.5, m3/s/Pa^0.5; flow coefficient m3/h (Kv), Cv, m3/s/Pa^0.5;
/// viscosity mPa·s, cP, Pa·s; temperature °C, °F, K; angle °, °, rad; force N, lbf, N; speed m/s, ft/s, m/s; acceleration m/s2, ft/s2, m/s2; stress MPa, psi, Pa; time s, current A, voltage V, resistance ohm, capacitance F and energy J in all three.
/// Values that are not finite pass through unchanged; a solver's result is checked before it comes here.
/// </remarks>
public static class QuantityWriter
{
    // A value below this, times the grain, is a whole number that a double holds exactly; up to an eighth of it the conversion's
    // own error, two units in the last place, is far under half a grain, so that the whole number found is the one meant.
    const double MostTidied = 4e6;
    const double Grain = 1e9;

    /// <summary>Converts an SI value to the unit of a system, in full precision.</summary>
    /// <param name="si">The value in the SI base unit of its kind; a pressure gauge, Pa.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="system">The system of units to write in.</param>
    /// <returns>The value and its unit. A value that was read in that same unit, has at most nine decimals and is under 500 000 comes back to the last digit.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> or <paramref name="system"/> is no member of its enumeration.</exception>
    public static WrittenQuantity Write(double si, QuantityKind kind, UnitSystem system)
    {
        var entry = WritingUnits.Of(kind, system);
        return new WrittenQuantity(Tidy(si, entry), entry.Symbol);
    }

    /// <summary>Converts an absolute pressure to the unit of a system, whose symbol then says so.</summary>
    /// <param name="pascals">Absolute pressure, Pa.</param>
    /// <param name="system">The system of units to write in.</param>
    /// <returns>The value in bara, psia or Pa(a).</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="system"/> is no member of its enumeration.</exception>
    public static WrittenQuantity WriteAbsolute(double pascals, UnitSystem system)
    {
        var (value, unit) = Write(pascals, QuantityKind.Pressure, system);
        return new(value, $"{unit}{(unit.Length > 2 ? "a" : "(a)")}");
    }

    /// <summary>Writes an SI value for a sentence, <c>12.3 bar</c>.</summary>
    /// <param name="si">The value in the SI base unit of its kind; a pressure gauge, Pa.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="system">The system of units to write in.</param>
    /// <param name="significantDigits">Digits to round to, 1 to 15; zeros at the end of the decimals are left out.</param>
    /// <returns>
    /// The number with a decimal point, without an exponent from 0.00001 to under 1e12, and the unit after a space (none before °). Small sizes take a smaller unit than
    /// <see cref="Write"/> does: metric lengths under 0.2 m mm and under 0.1 mm µm, areas under 0.01 m² mm2, volumes under 0.1 L mL, masses under 0.1 kg g; metric and us currents under 0.1 A mA, resistances under 0.1 ohm mohm;
    /// us lengths under 1 ft in, areas under 1 ft² in2, volumes under 0.1 US gal in3; si never.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> or <paramref name="system"/> is no member of its enumeration, or <paramref name="significantDigits"/> is outside 1 to 15.</exception>
    public static string Text(double si, QuantityKind kind, UnitSystem system, int significantDigits)
    {
        if (significantDigits is < 1 or > 15)
            throw new ArgumentOutOfRangeException(nameof(significantDigits), significantDigits, "Range: 1 to 15.");
        var entry = WritingUnits.OfText(si, kind, system);
        return Number(Tidy(si, entry), significantDigits) + (entry.Symbol == "°" ? "" : " ") + entry.Symbol;
    }

    /// <summary>The line from SI to the unit of a system, for writing many values: value = si × Factor + Offset.</summary>
    /// <param name="kind">What the values measure; pressures gauge.</param>
    /// <param name="system">The system of units to write in.</param>
    /// <returns>Factor in units per SI base unit, offset in the unit, the unit's symbol. Values differ from those of <see cref="Write"/> in the last one or two digits of a double at most.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> or <paramref name="system"/> is no member of its enumeration.</exception>
    public static (double Factor, double Offset, string Unit) Scale(QuantityKind kind, UnitSystem system)
    {
        var entry = WritingUnits.Of(kind, system);
        var offset = entry.Offset == 0 ? 0.0 : Tidy(0.0, entry);
        return (entry.Factor == 1 ? 1.0 : entry.FromSi(1.0 + entry.Offset), offset, entry.Symbol);
    }

    // Several neighbouring values lead to the same SI double; of these the one with few decimals is what somebody wrote.
    // It is taken only where it converts to exactly the value at hand, so nothing is rounded away.
    static double Tidy(double si, UnitEntry entry)
    {
        var value = entry.FromSi(si);
        if (!(Math.Abs(value) < MostTidied)) return value;
        var few = Math.Round(value * Grain) / Grain;
        return entry.ToSi(few) == si ? few : value;
    }

    static string Number(double value, int digits)
    {
        if (value == 0 || !double.IsFinite(value)) return value.ToString(CultureInfo.InvariantCulture);
        var rounded = value.ToString("E" + (digits - 1), CultureInfo.InvariantCulture);
        var exponent = int.Parse(rounded.AsSpan(rounded.IndexOf('E') + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var nearest = double.Parse(rounded, CultureInfo.InvariantCulture);
        if (exponent is < -5 or > 11) return nearest.ToString("0." + new string('#', digits - 1) + "e0", CultureInfo.InvariantCulture);

        var decimals = Math.Max(0, digits - 1 - exponent);
        var text = nearest.ToString("F" + decimals, CultureInfo.InvariantCulture);
        return decimals > 0 ? text.TrimEnd('0').TrimEnd('.') : text;
    }
}
