namespace FlowCalc.Quantities;

/// <summary>The spaces that may stand around a number and its unit: space, and the no-break, narrow no-break and thin space that word processors put there.</summary>
static class Spaces
{
    /// <summary>Bytes of the space that the text starts with; 0 where it starts with none.</summary>
    public static int Leading(ReadOnlySpan<byte> text) => text switch
    {
        [(byte)' ', ..] => 1,
        [0xC2, 0xA0, ..] => 2,
        [0xE2, 0x80, 0xAF or 0x89, ..] => 3,
        _ => 0,
    };

    /// <summary>The text without the spaces in front.</summary>
    public static ReadOnlySpan<byte> TrimStart(ReadOnlySpan<byte> text)
    {
        for (var width = Leading(text); width > 0; width = Leading(text)) text = text[width..];
        return text;
    }

    /// <summary>The text without the spaces on either side.</summary>
    public static ReadOnlySpan<byte> Trim(ReadOnlySpan<byte> text)
    {
        for (var width = Trailing(text); width > 0; width = Trailing(text)) text = text[..^width];
        return TrimStart(text);
    }

    /// <summary>Copies the text with every row of spaces as one plain space.</summary>
    /// <returns>The bytes written.</returns>
    public static int Collapse(ReadOnlySpan<byte> text, Span<byte> target)
    {
        var written = 0;
        while (!text.IsEmpty)
        {
            var rest = TrimStart(text);
            if (rest.Length < text.Length)
            {
                target[written++] = (byte)' ';
                text = rest;
                continue;
            }
            target[written++] = text[0];
            text = text[1..];
        }
        return written;
    }

    static int Trailing(ReadOnlySpan<byte> text) => text switch
    {
        [.., (byte)' '] => 1,
        [.., 0xC2, 0xA0] => 2,
        [.., 0xE2, 0x80, 0xAF or 0x89] => 3,
        _ => 0,
    };
}
