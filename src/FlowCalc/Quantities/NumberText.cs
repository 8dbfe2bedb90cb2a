using System.Globalization;

namespace FlowCalc.Quantities;

/// <summary>The strict grammar of a number: sign? digits (point digits)? (e sign? digits)?, or sign? point digits; the nearest double, always.</summary>
static class NumberText
{
    // Powers of ten that a double holds exactly.
    static ReadOnlySpan<double> ExactPowers =>
    [
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11,
        1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22,
    ];

    /// <summary>Reads the number that the text starts with.</summary>
    /// <param name="text">UTF-8 text.</param>
    /// <param name="value">The nearest double; infinite where the number is too large for one.</param>
    /// <param name="length">Bytes that the number takes.</param>
    /// <returns>Whether the text starts with a number.</returns>
    public static bool TryScan(ReadOnlySpan<byte> text, out double value, out int length)
    {
        var sign = SignLength(text, out var negative);
        var at = sign;
        var digits = 0UL;
        var significant = 0;
        ScanDigits(text, ref at, ref digits, ref significant);
        var whole = at - sign;
        var decimals = 0;
        if (at + 1 < text.Length && text[at] == '.' && IsDigit(text[at + 1]))
        {
            var point = ++at;
            ScanDigits(text, ref at, ref digits, ref significant);
            decimals = at - point;
        }
        if (whole + decimals == 0)
        {
            (value, length) = (0.0, 0);
            return false;
        }
        var exponent = ScanExponent(text, ref at) - decimals;
        length = at;
        value = Nearest(text[sign..at], digits, significant, exponent);
        if (negative) value = -value;
        return true;
    }

    /// <summary>Bytes of the sign that the text starts with: +, - or the minus of typesetting, U+2212.</summary>
    public static int SignLength(ReadOnlySpan<byte> text, out bool negative)
    {
        negative = text is [(byte)'-', ..] or [0xE2, 0x88, 0x92, ..];
        return text is [(byte)'-' or (byte)'+', ..] ? 1 : negative ? 3 : 0;
    }

    /// <summary>Whether the byte is one of 0 to 9.</summary>
    public static bool IsDigit(byte octet) => (uint)(octet - '0') <= 9;

    static void ScanDigits(ReadOnlySpan<byte> text, ref int at, ref ulong digits, ref int significant)
    {
        for (; at < text.Length && IsDigit(text[at]); at++)
        {
            // Past 19 digits the sum would wrap; the count alone then sends the number the long way.
            if (significant < 19) digits = digits * 10 + (uint)(text[at] - '0');
            if (digits > 0) significant++;
        }
    }

    static int ScanExponent(ReadOnlySpan<byte> text, ref int at)
    {
        if (at >= text.Length || (text[at] | 0x20) != 'e') return 0;
        var next = at + 1;
        var negative = next < text.Length && text[next] == '-';
        if (next < text.Length && text[next] is (byte)'-' or (byte)'+') next++;
        if (next >= text.Length || !IsDigit(text[next])) return 0;

        var exponent = 0;
        for (; next < text.Length && IsDigit(text[next]); next++)
            exponent = Math.Min(exponent * 10 + (text[next] - '0'), 100_000);
        at = next;
        return negative ? -exponent : exponent;
    }

    // Clinger, "How to read floating point numbers accurately", PLDI 1990: digits and power of ten both exact in a double
    // make one rounding, which is the nearest double. Everything else goes to the framework's parser, also exact.
    static double Nearest(ReadOnlySpan<byte> unsigned, ulong digits, int significant, int exponent)
    {
        if (significant <= 19 && digits <= 1UL << 53 && exponent is >= -22 and <= 22)
            return exponent < 0 ? digits / ExactPowers[-exponent] : digits * ExactPowers[exponent];
        return double.Parse(unsigned, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture);
    }
}
