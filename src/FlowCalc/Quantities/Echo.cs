using System.Globalization;
using System.Text;

namespace FlowCalc.Quantities;

/// <summary>What was read, quoted so that it can stand in a message: capped, and with nothing in it that could hide or act.</summary>
static class Echo
{
    const int MostCharacters = 80;

    /// <summary>The text in double quotes.</summary>
    public static string Quoted(ReadOnlySpan<byte> utf8) => $"\"{Plain(utf8)}\"";

    /// <summary>The text without quotes; at most 80 characters and an ellipsis.</summary>
    public static string Plain(ReadOnlySpan<byte> utf8)
    {
        var text = new StringBuilder();
        while (!utf8.IsEmpty)
        {
            Rune.DecodeFromUtf8(utf8, out var rune, out var consumed);
            var piece = Shown(rune);
            if (text.Length + piece.Length > MostCharacters) return text.Append('…').ToString();
            text.Append(piece);
            utf8 = utf8[consumed..];
        }
        return text.ToString();
    }

    static string Shown(Rune rune) => rune.Value switch
    {
        ' ' => " ",
        '"' => "\\\"",
        '\\' => "\\\\",
        _ when Hides(Rune.GetUnicodeCategory(rune)) => rune.IsBmp ? $"\\u{rune.Value:X4}" : $"\\U{rune.Value:X8}",
        _ => rune.ToString(),
    };

    // Controls, direction overrides, line separators and odd spaces would be invisible or rearrange the line they are printed in.
    static bool Hides(UnicodeCategory category) => category is UnicodeCategory.Control or UnicodeCategory.Format
        or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.SpaceSeparator
        or UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark
        or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned or UnicodeCategory.Surrogate;
}
