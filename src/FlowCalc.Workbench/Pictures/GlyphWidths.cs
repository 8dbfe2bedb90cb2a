using System.Buffers.Binary;

namespace FlowCalc.Workbench.Pictures;

/// <summary>Widths of the letters of a TrueType font, from its tables <c>cmap</c> (format 4) and <c>hmtx</c> (OpenType specification, ISO/IEC 14496-22).</summary>
sealed class GlyphWidths
{
    readonly ushort[] widths = new ushort[char.MaxValue + 1];
    readonly double unitsPerEm;

    /// <summary>Reads a font.</summary>
    /// <exception cref="InvalidDataException">It has no map of characters in format 4.</exception>
    public GlyphWidths(ReadOnlySpan<byte> font)
    {
        unitsPerEm = U16(Table(font, "head"u8), 18);
        var advances = Table(font, "hmtx"u8);
        var known = U16(Table(font, "hhea"u8), 34);
        var map = Map(Table(font, "cmap"u8));
        var segments = U16(map, 6) / 2;
        for (var at = 0; at < segments; at++)
        {
            var (last, first) = (U16(map, 14 + 2 * at), U16(map, 16 + 2 * (segments + at)));
            var (delta, rangeAt) = (U16(map, 16 + 2 * (2 * segments + at)), 16 + 2 * (3 * segments + at));
            var range = U16(map, rangeAt);
            for (int character = first; character <= last && character < char.MaxValue; character++)
            {
                int glyph = range == 0 ? character : U16(map, rangeAt + range + 2 * (character - first));
                if (range == 0 || glyph != 0) glyph = (glyph + delta) & 0xffff;
                widths[character] = U16(advances, 4 * Math.Min(glyph, known - 1));
            }
        }
    }

    /// <summary>Width of a text at an em of 1; a character that the font lacks counts as its widest common letter, an em.</summary>
    public double Of(string text)
    {
        var sum = 0.0;
        foreach (var character in text) sum += widths[character] == 0 ? unitsPerEm : widths[character];
        return sum / unitsPerEm;
    }

    static ReadOnlySpan<byte> Table(ReadOnlySpan<byte> font, ReadOnlySpan<byte> tag)
    {
        for (var at = 0; at < U16(font, 4); at++)
        {
            var row = font[(12 + 16 * at)..];
            if (row.StartsWith(tag)) return font[(int)BinaryPrimitives.ReadUInt32BigEndian(row[8..])..];
        }
        throw new InvalidDataException("The font lacks a table.");
    }

    static ReadOnlySpan<byte> Map(ReadOnlySpan<byte> maps)
    {
        for (var at = 0; at < U16(maps, 2); at++)
        {
            var map = maps[(int)BinaryPrimitives.ReadUInt32BigEndian(maps[(8 + 8 * at)..])..];
            if (U16(map, 0) == 4) return map;
        }
        throw new InvalidDataException("The font has no map of characters in format 4.");
    }

    static ushort U16(ReadOnlySpan<byte> bytes, int at) => BinaryPrimitives.ReadUInt16BigEndian(bytes[at..]);
}
