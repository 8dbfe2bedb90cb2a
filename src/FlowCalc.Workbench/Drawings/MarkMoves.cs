using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Moves marks over the sheet.</summary>
static class MarkMoves
{
    /// <summary>A mark as it is so far to the right and down.</summary>
    public static Mark Moved(this Mark mark, double right, double down) => mark switch
    {
        Stroke stroke => stroke with { Spots = Moved(stroke.Spots, right, down) },
        Patch patch => patch with { Spots = Moved(patch.Spots, right, down) },
        Disc disc => disc with { Centre = Moved(disc.Centre, right, down) },
        Words words => words with { At = Moved(words.At, right, down) },
        Thing thing => thing with { Marks = [.. thing.Marks.Select(inner => inner.Moved(right, down))] },
        _ => throw new ArgumentException($"A {mark.GetType().Name} cannot be moved.", nameof(mark)),
    };

    static ImmutableArray<Spot> Moved(ImmutableArray<Spot> spots, double right, double down) => [.. spots.Select(spot => Moved(spot, right, down))];

    static Spot Moved(Spot spot, double right, double down) => new(spot.X + right, spot.Y + down);
}
