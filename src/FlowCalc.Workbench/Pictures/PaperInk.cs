namespace FlowCalc.Workbench.Pictures;

/// <summary>The colours of paper, and of a picture that stands alone.</summary>
/// <remarks>
/// The steps are evenly spaced samples of the colour map cividis (Nuñez, Anderton and Renslow 2018, PLOS ONE 13(7), values from memory), which looks alike to people with and without a colour deficiency and
/// rises evenly in lightness; the kinds are the eight of Okabe and Ito 2008, "Color Universal Design" (values from memory), the yellow darkened for thin lines on white.
/// </remarks>
public static class PaperInk
{
    /// <summary>The colour of an ink as <c>#rrggbb</c>.</summary>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="ink"/> is no member of its enumeration.</exception>
    public static string Of(Ink ink) => ink switch
    {
        Ink.Sheet => "#ffffff",
        Ink.Line => "#1b2430",
        Ink.Muted => "#5a6673",
        Ink.Grid => "#d5dbe1",
        Ink.Chosen => "#0b57d0",
        Ink.Pass => "#1f6f43",
        Ink.Note => "#2f5f8f",
        Ink.Warn => "#8a5a00",
        Ink.Fail => "#b3261e",
        Ink.Step1 => "#00224e",
        Ink.Step2 => "#2a3f6d",
        Ink.Step3 => "#575d6d",
        Ink.Step4 => "#7c7b78",
        Ink.Step5 => "#a59c74",
        Ink.Step6 => "#d2c060",
        Ink.Step7 => "#fee838",
        Ink.Kind1 => "#0072b2",
        Ink.Kind2 => "#d55e00",
        Ink.Kind3 => "#009e73",
        Ink.Kind4 => "#cc79a7",
        Ink.Kind5 => "#000000",
        Ink.Kind6 => "#56b4e9",
        Ink.Kind7 => "#e69f00",
        Ink.Kind8 => "#9a8c00",
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "No such ink."),
    };

    /// <summary>The name by which a style sheet may replace the colour, <c>step4</c>.</summary>
    public static string Name(Ink ink) => Names[(int)ink];

    static readonly string[] Names = [.. Enum.GetNames<Ink>().Select(name => name.ToLowerInvariant())];
}
