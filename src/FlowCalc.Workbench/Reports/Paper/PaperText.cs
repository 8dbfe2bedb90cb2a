using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Reports.Paper;

/// <summary>Text broken into lines.</summary>
static class PaperText
{
    /// <summary>The lines of a text; a word wider than the line is broken.</summary>
    /// <param name="text">The text; line breaks and other control characters count as spaces, halves of surrogate pairs as unknown letters.</param>
    /// <param name="size">Height of the letters, points.</param>
    /// <param name="width">Width of a line, points, over that of a letter.</param>
    /// <param name="isBold">Whether they are bold.</param>
    public static List<string> Lines(string text, double size, double width, bool isBold = false)
    {
        List<string> lines = [];
        var line = "";
        double used = 0, space = Lettering.Width(" ", size, isBold);
        foreach (var word in Clean(text).Split(' ', StringSplitOptions.RemoveEmptyEntries))
            foreach (var (part, isNew) in Parts(word, size, width, isBold))
            {
                var room = Lettering.Width(part, size, isBold);
                var gap = isNew && line.Length > 0 ? space : 0;
                if (line.Length > 0 && (!isNew || used + gap + room > width))
                {
                    lines.Add(line);
                    (line, used, gap) = ("", 0, 0);
                }
                line += gap > 0 ? " " + part : part;
                used += gap + room;
            }
        if (line.Length > 0 || lines.Count == 0) lines.Add(line);
        return lines;
    }

    /// <summary>A text without what no font has.</summary>
    public static string Clean(string text)
    {
        if (!text.Any(letter => char.IsControl(letter) || char.IsSurrogate(letter))) return text;
        // Runes stand for whole characters; half a pair becomes the replacement character.
        return string.Concat(text.EnumerateRunes().Select(rune => System.Text.Rune.IsControl(rune) ? " " : rune.ToString()));
    }

    // A word in parts that fit a line; only the first begins a new word.
    static IEnumerable<(string Part, bool IsNew)> Parts(string word, double size, double width, bool isBold)
    {
        if (Lettering.Width(word, size, isBold) <= width)
        {
            yield return (word, true);
            yield break;
        }
        int start = 0, end = 0;
        var used = 0.0;
        while (end < word.Length)
        {
            var length = char.IsSurrogate(word[end]) ? 2 : 1;
            var room = Lettering.Width(word.Substring(end, length), size, isBold);
            if (end > start && used + room > width)
            {
                yield return (word[start..end], start == 0);
                (start, used) = (end, 0);
            }
            (end, used) = (end + length, used + room);
        }
        yield return (word[start..], start == 0);
    }
}
