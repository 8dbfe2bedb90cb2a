using System.Text;

namespace FlowCalc.Quantities;

/// <summary>The sentences that say why a quantity was not read, and what would be right.</summary>
static class QuantityFault
{
    public static string TooLong(ReadOnlySpan<byte> read, QuantityKind kind, int limit) =>
        Sentence(read, $"longer than {limit} bytes, too long for a number and a unit", kind);

    public static string NotFinite(ReadOnlySpan<byte> read, QuantityKind kind) =>
        Sentence(read, "not a finite number", kind);

    public static string TooLarge(ReadOnlySpan<byte> read, QuantityKind kind) =>
        Sentence(read, "the number is too large", kind);

    public static string BelowAbsoluteZero(ReadOnlySpan<byte> read) =>
        $"read {Echo.Quoted(read)}: below absolute zero (0 K, -273.15 °C, -459.67 °F)";

    public static string BelowVacuum(ReadOnlySpan<byte> read) =>
        $"read {Echo.Quoted(read)}: an absolute pressure cannot be below 0; a gauge pressure has a unit without the a, such as bar";

    public static string ZeroDenominator(ReadOnlySpan<byte> read) =>
        $"read {Echo.Quoted(read)}: a fraction over zero";

    public static string ImproperFraction(ReadOnlySpan<byte> read) =>
        $"read {Echo.Quoted(read)}: the fraction beside a whole number must be under one, such as 1 1/2 in";

    public static string FractionOfOtherUnit(ReadOnlySpan<byte> read, string unit) =>
        $"read {Echo.Quoted(read)}: fractions are read for inches only; write {unit} with a decimal point";

    /// <summary>Why there is no number where the text should start with one.</summary>
    public static string NoNumber(ReadOnlySpan<byte> read, ReadOnlySpan<byte> body, QuantityKind kind)
    {
        if (body.IsEmpty) return Sentence(read, "empty", kind);
        var rest = body[NumberText.SignLength(body, out _)..];
        if (StartsWithIgnoringCase(rest, "nan") || StartsWithIgnoringCase(rest, "inf") || rest.StartsWith("∞"u8)) return NotFinite(read, kind);
        if (rest is [(byte)',', ..]) return Comma(read);
        return UnitTable.Find(kind, body) is { } unit
            ? $"read {Echo.Quoted(read)}: no number before the unit; write such as \"12.5 {unit.Text}\""
            : Sentence(read, "does not start with a number", kind);
    }

    /// <summary>Why what follows the number is no unit of this kind.</summary>
    public static string NoUnit(ReadOnlySpan<byte> read, ReadOnlySpan<byte> gap, ReadOnlySpan<byte> unit, QuantityKind kind)
    {
        if (unit.IsEmpty) return Sentence(read, "the unit is missing", kind);
        if (unit is [(byte)',', ..]) return Comma(read);
        if (unit is [(byte)'.', ..]) return $"read {Echo.Quoted(read)}: a number has one decimal point, with digits behind it";
        if (NumberText.IsDigit(unit[0]) || (gap.IsEmpty && (unit[0] is (byte)'\'' or (byte)'_' || unit.StartsWith("’"u8))))
            return $"read {Echo.Quoted(read)}: a number has no thousands marks and no spaces inside; fractions are for inches, such as 1 1/2 in";
        if (unit is [(byte)'-', var next, ..] && NumberText.IsDigit(next))
            return $"read {Echo.Quoted(read)}: a whole number and its fraction are parted by a space, such as 1 1/2 in";
        if (gap.IsEmpty && unit is [(byte)'x' or (byte)'X', ..]) return Sentence(read, "a number is written in decimal digits", kind);
        return Sentence(read, UnitFlaw(unit, kind), kind);
    }

    static string UnitFlaw(ReadOnlySpan<byte> unit, QuantityKind kind)
    {
        if (IsBareGallon(unit)) return "which gallon it means is not said (US 3.785 L, imperial 4.546 L): write US gal, US gal/min or US gal/min/psi^0.5, or use litres";
        List<string> others = [];
        foreach (var other in Enum.GetValues<QuantityKind>())
            if (UnitTable.Find(other, unit) is not null) others.Add(KindWords.Of(other));
        var shown = Echo.Plain(unit);
        if (others.Count > 0) return $"{shown} is a unit of {string.Join(" and of ", others)}";
        return Nearest(Encoding.UTF8.GetString(unit), kind) is { } near ? $"unknown unit {shown}, did you mean {near}?" : $"unknown unit {shown}";
    }

    static bool IsBareGallon(ReadOnlySpan<byte> unit) => StartsWithIgnoringCase(unit, "gal") || StartsWithIgnoringCase(unit, "gpm");

    static string? Nearest(string unit, QuantityKind kind)
    {
        foreach (var entry in UnitTable.Of(kind))
        {
            if (IsNear(entry.Symbol)) return entry.Symbol;
            foreach (var twin in entry.Twins)
                if (IsNear(twin)) return twin;
        }
        return null;

        bool IsNear(string spelling) => spelling.AsSpan().TrimStart('°').Equals(unit.AsSpan().TrimStart('°'), StringComparison.OrdinalIgnoreCase);
    }

    static string Comma(ReadOnlySpan<byte> read) =>
        $"read {Echo.Quoted(read)}: a comma is never guessed at; write a decimal point, such as 1.5, and no thousands marks";

    static bool StartsWithIgnoringCase(ReadOnlySpan<byte> text, string word) =>
        text.Length >= word.Length && Ascii.EqualsIgnoreCase(text[..word.Length], word);

    static string Sentence(ReadOnlySpan<byte> read, string flaw, QuantityKind kind) =>
        $"read {Echo.Quoted(read)}: {flaw}; {KindWords.Of(kind)} takes {UnitTable.FittingUnits(kind)}";
}
