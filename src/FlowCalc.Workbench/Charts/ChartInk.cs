using FlowCalc.Workbench.Pictures;
using OxyPlot;

namespace FlowCalc.Workbench.Charts;

/// <summary>Inks as the plotting library's colours, and back: a colour there is a mere number that stands for an ink here.</summary>
static class ChartInk
{
    const byte Tag = 0x5a;

    /// <summary>The colour that stands for an ink.</summary>
    public static OxyColor Of(Ink ink) => OxyColor.FromArgb(byte.MaxValue, Tag, 0, (byte)ink);

    /// <summary>The ink that a colour stands for; null for none.</summary>
    /// <exception cref="InvalidOperationException">The colour stands for no ink: a part of the plot was left with a colour of the library's own.</exception>
    public static Ink? Of(OxyColor colour)
    {
        if (colour.IsInvisible() || colour.IsUndefined()) return null;
        var ink = (Ink)colour.B;
        return colour.R == Tag && Enum.IsDefined(ink) ? ink : throw new InvalidOperationException($"The colour {colour} stands for no ink.");
    }
}
