namespace FlowCalc.Quantities;

/// <summary>What the attempt to read a fraction came to.</summary>
enum FractionOutcome
{
    /// <summary>The text does not start with a fraction.</summary>
    None,

    /// <summary>A fraction was read.</summary>
    Read,

    /// <summary>The number under the stroke is zero.</summary>
    ZeroDenominator,

    /// <summary>A mixed number whose fraction is one or more, such as 1 5/4: more likely a slip than meant.</summary>
    Improper,
}

/// <summary>Fractions as tube and thread sizes are written in inches: <c>1/4</c>, <c>1 1/2</c>.</summary>
static class InchFraction
{
    // Six digits are more than any size needs, and whole × denominator + numerator stays exact in a double.
    const int MostDigits = 6;

    /// <summary>Reads the fraction that the text starts with.</summary>
    public static FractionOutcome TryScan(ReadOnlySpan<byte> text, out double value, out int length)
    {
        (value, length) = (0.0, 0);
        var at = NumberText.SignLength(text, out var negative);
        if (!Digits(text, ref at, out var numerator)) return FractionOutcome.None;
        var whole = 0L;
        var spaces = text[at..].Length - Spaces.TrimStart(text[at..]).Length;
        var isMixed = spaces > 0;
        if (isMixed)
        {
            at += spaces;
            whole = numerator;
            if (!Digits(text, ref at, out numerator)) return FractionOutcome.None;
        }
        if (at >= text.Length || text[at] != '/') return FractionOutcome.None;
        at++;
        if (!Digits(text, ref at, out var denominator)) return FractionOutcome.None;
        if (denominator == 0) return FractionOutcome.ZeroDenominator;
        if (isMixed && numerator >= denominator) return FractionOutcome.Improper;

        var size = (double)(whole * denominator + numerator) / denominator;
        (value, length) = (negative ? -size : size, at);
        return FractionOutcome.Read;
    }

    static bool Digits(ReadOnlySpan<byte> text, ref int at, out long value)
    {
        value = 0;
        var start = at;
        for (; at < text.Length && at - start < MostDigits && NumberText.IsDigit(text[at]); at++)
            value = value * 10 + (text[at] - '0');
        return at > start && (at == text.Length || !NumberText.IsDigit(text[at]));
    }
}
