using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;

namespace FlowCalc.Quantities;

/// <summary>Reads a number with its unit, <c>12.5 bar</c>, against the closed table of units.</summary>
/// <remarks>
/// Grammar: a number (decimal point, exponent allowed, signs + and -, also U+2212), spaces or none, a unit as <see cref="UnitTable"/> spells it.
/// Space, no-break space, narrow no-break space and thin space may stand in front, between and behind. Fractions are read for inches only
/// (<c>1/4 in</c>, <c>1 1/2 in</c>). Nothing is guessed: a decimal comma, thousands marks, a gallon that does not say whose, and a letter in the wrong case are faults.
/// Pressures are gauge unless the unit says absolute. A temperature below absolute zero and an absolute pressure below 0 are faults;
/// every other range, and negative values in general, are the caller's to check.
/// The number is the double nearest to the text, and the SI value follows from it by one multiplication or division and, for temperatures, one addition.
/// No method throws for any text; reading allocates nothing unless there is a fault.
/// </remarks>
public static class QuantityReader
{
    // Twice what the longest unit with a number of full precision takes.
    const int MostBytes = 200;

    /// <summary>Reads a quantity from UTF-8 text.</summary>
    /// <param name="utf8Text">The text, such as <c>12.5 bar</c>; at most 200 bytes.</param>
    /// <param name="kind">What the quantity must measure.</param>
    /// <param name="reading">The quantity in SI base units; the default where there is a fault.</param>
    /// <param name="fault">Null, or a sentence that says what was read and which units fit.</param>
    /// <returns>Whether a quantity of that kind was read.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is no member of its enumeration.</exception>
    public static bool TryRead(ReadOnlySpan<byte> utf8Text, QuantityKind kind, out Reading reading, [NotNullWhen(false)] out string? fault)
    {
        if (utf8Text.Length <= MostBytes
            && Spaces.Trim(utf8Text) is var body
            && NumberText.TryScan(body, out var value, out var length)
            && UnitTable.Find(kind, Spaces.TrimStart(body[length..])) is { } unit)
            return TryConvert(value, unit, utf8Text, out reading, out fault);
        return TryReadRare(utf8Text, kind, out reading, out fault);
    }

    /// <summary>Reads a quantity from text.</summary>
    /// <param name="text">The text, such as <c>12.5 bar</c>; at most 200 bytes in UTF-8.</param>
    /// <param name="kind">What the quantity must measure.</param>
    /// <param name="reading">The quantity in SI base units; the default where there is a fault.</param>
    /// <param name="fault">Null, or a sentence that says what was read and which units fit.</param>
    /// <returns>Whether a quantity of that kind was read.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="text"/> is null.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is no member of its enumeration.</exception>
    public static bool TryRead(string text, QuantityKind kind, out Reading reading, [NotNullWhen(false)] out string? fault)
    {
        ArgumentNullException.ThrowIfNull(text);
        // One character more than may be read still shows the byte reader that the text is too long.
        var shown = text.AsSpan(0, Math.Min(text.Length, MostBytes + 1));
        Span<byte> utf8 = stackalloc byte[3 * (MostBytes + 1)];
        return TryRead(utf8[..Encoding.UTF8.GetBytes(shown, utf8)], kind, out reading, out fault);
    }

    /// <summary>Reads a quantity given as a number and a unit apart.</summary>
    /// <param name="value">The number, in the unit.</param>
    /// <param name="utf8Unit">The unit, as UTF-8 text; at most 200 bytes.</param>
    /// <param name="kind">What the quantity must measure.</param>
    /// <param name="reading">The quantity in SI base units; the default where there is a fault.</param>
    /// <param name="fault">Null, or a sentence that says what was read and which units fit.</param>
    /// <returns>Whether a quantity of that kind was read.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is no member of its enumeration.</exception>
    public static bool TryRead(double value, ReadOnlySpan<byte> utf8Unit, QuantityKind kind, out Reading reading, [NotNullWhen(false)] out string? fault)
    {
        if (double.IsFinite(value) && utf8Unit.Length <= MostBytes && Find(kind, Spaces.Trim(utf8Unit)) is { } unit)
        {
            if (TryConvert(value, unit, default, out reading, out fault)) return true;
            return TryConvert(value, unit, Joined(value, utf8Unit), out reading, out fault);
        }
        var read = Joined(value, utf8Unit);
        reading = default;
        fault = !double.IsFinite(value) ? QuantityFault.NotFinite(read, kind)
            : utf8Unit.Length > MostBytes ? QuantityFault.TooLong(read, kind, MostBytes)
            : QuantityFault.NoUnit(read, " "u8, Spaces.Trim(utf8Unit), kind);
        return false;
    }

    // Fractions, odd spaces within the unit, and every fault: off the path that a sound document takes.
    static bool TryReadRare(ReadOnlySpan<byte> text, QuantityKind kind, out Reading reading, [NotNullWhen(false)] out string? fault)
    {
        reading = default;
        if (text.Length > MostBytes)
        {
            fault = QuantityFault.TooLong(text, kind, MostBytes);
            return false;
        }
        var body = Spaces.Trim(text);
        var outcome = InchFraction.TryScan(body, out var value, out var length);
        if (outcome is FractionOutcome.ZeroDenominator or FractionOutcome.Improper)
        {
            fault = outcome is FractionOutcome.Improper ? QuantityFault.ImproperFraction(text) : QuantityFault.ZeroDenominator(text);
            return false;
        }
        if (outcome is FractionOutcome.None && !NumberText.TryScan(body, out value, out length))
        {
            fault = QuantityFault.NoNumber(text, body, kind);
            return false;
        }
        var rest = body[length..];
        var unitText = Spaces.TrimStart(rest);
        if (Find(kind, unitText) is not { } unit)
        {
            fault = QuantityFault.NoUnit(text, rest[..^unitText.Length], unitText, kind);
            return false;
        }
        if (outcome is FractionOutcome.Read && unit.Entry.Symbol != "in")
        {
            fault = QuantityFault.FractionOfOtherUnit(text, unit.Text);
            return false;
        }
        return TryConvert(value, unit, text, out reading, out fault);
    }

    static UnitSpelling? Find(QuantityKind kind, ReadOnlySpan<byte> unit)
    {
        if (UnitTable.Find(kind, unit) is { } spelling) return spelling;
        Span<byte> collapsed = stackalloc byte[MostBytes];
        return UnitTable.Find(kind, collapsed[..Spaces.Collapse(unit, collapsed)]);
    }

    static bool TryConvert(double value, UnitSpelling unit, ReadOnlySpan<byte> read, out Reading reading, [NotNullWhen(false)] out string? fault)
    {
        var entry = unit.Entry;
        // Adding the offset, 0 for most, also turns −0 into 0.
        var si = entry.ToSi(value);
        // -459.67 °F is absolute zero, but rounds to a hair's breadth beside it; a double near the offset has no finer grain.
        if (entry.Offset != 0 && Math.Abs(si) < 1e-12) si = 0.0;
        fault = !double.IsFinite(si) ? QuantityFault.TooLarge(read, entry.Kind)
            : si >= 0 ? null
            : entry.Kind == QuantityKind.Temperature ? QuantityFault.BelowAbsoluteZero(read)
            : entry.IsAbsolute == true ? QuantityFault.BelowVacuum(read)
            : null;
        reading = fault is null ? new Reading(entry.Kind, si, entry.IsAbsolute == false, unit.Text) : default;
        return fault is null;
    }

    static byte[] Joined(double value, ReadOnlySpan<byte> utf8Unit) =>
        [.. Encoding.UTF8.GetBytes(value.ToString(CultureInfo.InvariantCulture)), (byte)' ', .. utf8Unit];
}
