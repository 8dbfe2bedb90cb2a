using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Charts;

/// <summary>Names of the document as labels: one line, no wider than their place.</summary>
static class LabelText
{
    const int Longest = 120;

    /// <summary>A text cut to a width, with an ellipsis where something is cut.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Height of its letters, points.</param>
    /// <param name="width">The width, points.</param>
    public static string Fit(string text, double size, double width)
    {
        var line = string.Concat((text.Length > Longest ? text[..Longest] : text).Select(letter => char.IsControl(letter) ? ' ' : letter));
        if (line.Length == text.Length && Lettering.Width(line, size) <= width) return line;
        var length = line.Length;
        while (length > 0 && (char.IsHighSurrogate(line[length - 1]) || Lettering.Width(line[..length] + "…", size) > width)) length--;
        return line[..length] + "…";
    }
}
