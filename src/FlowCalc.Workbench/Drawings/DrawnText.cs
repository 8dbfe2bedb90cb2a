using System.Globalization;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Text of a document on a drawing, where it has only so much room.</summary>
static class DrawnText
{
    /// <summary>Widest name on a drawing, points; a longer one ends in an ellipsis and stands in full in the tip.</summary>
    public const double Widest = 120;

    const string Ellipsis = "…";

    /// <summary>A text cut between what readers see as letters so that it fits.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Height of the em, points.</param>
    /// <param name="isBold">Whether it is bold.</param>
    /// <param name="widest">Room, points.</param>
    public static string Shortened(string text, double size, bool isBold, double widest = Widest)
    {
        if (Lettering.Width(text, size, isBold) <= widest) return text;
        var left = widest - Lettering.Width(Ellipsis, size, isBold);
        var end = 0;
        foreach (var start in StringInfo.ParseCombiningCharacters(text))
        {
            if (start > 0 && Lettering.Width(text[..start], size, isBold) > left) break;
            end = start;
        }
        return text[..end] + Ellipsis;
    }

    /// <summary>A text in lines of so much room, broken at spaces; a longer word has a line of its own.</summary>
    public static List<string> Lines(string text, double size, double widest)
    {
        List<string> lines = [];
        var line = "";
        foreach (var word in text.Split(' '))
        {
            var longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Lettering.Width(longer, size) > widest)
            {
                lines.Add(line);
                longer = word;
            }
            line = longer;
        }
        lines.Add(line);
        return lines;
    }
}
