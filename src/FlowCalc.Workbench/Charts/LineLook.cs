using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Charts;

/// <summary>Lines that are told apart by colour and, where there is none, by their dashes.</summary>
static class LineLook
{
    static readonly Ink[] Inks = [Ink.Kind1, Ink.Kind2, Ink.Kind3, Ink.Kind4, Ink.Kind5, Ink.Kind6, Ink.Kind7, Ink.Kind8];

    // Lengths of dashes and gaps in points of a line of width 1; the first is a full line.
    static readonly double[][] Patterns = [[], [7, 3], [2, 2], [8, 2, 2, 2], [12, 3], [4, 4], [8, 2, 2, 2, 2, 2], [1, 3]];

    /// <summary>How many lines are told apart.</summary>
    public static int Count => Inks.Length;

    /// <summary>Colour of a line.</summary>
    public static Ink Of(int at) => Inks[at];

    /// <summary>Dashes of a line.</summary>
    public static double[] Dashes(int at) => Patterns[at];
}
