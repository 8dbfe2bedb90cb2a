using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Tests.Drawings;

/// <summary>What is on a picture, found in its marks alone.</summary>
sealed class SeenPicture(Picture picture)
{
    /// <summary>Every text with the box that its letters take.</summary>
    public IReadOnlyList<(string Text, Box Box)> Texts { get; } = [.. All(picture.Marks).OfType<Words>().Select(words => (words.Text, BoxOf(words)))];

    /// <summary>Names and numbers of points and runs, by path.</summary>
    public IReadOnlyList<(string Path, Box Box)> Labels { get; } =
        [.. picture.Marks.OfType<Thing>().Where(thing => thing.IsRest).SelectMany(thing => thing.Marks.OfType<Words>().Select(words => (thing.Path, BoxOf(words))))];

    /// <summary>Symbols of points, by path.</summary>
    public IReadOnlyList<(string Path, Box Box)> Symbols { get; } =
        [.. Things(picture, "points/").Select(thing => (thing.Path, SymbolMarks.BoxOf(thing.Marks)))];

    /// <summary>Middle lines and whole widths of tubes, by path.</summary>
    public IReadOnlyList<(string Path, Stroke Tube)> Tubes { get; } =
        [.. Things(picture, "runs/").Select(thing => (thing.Path, thing.Marks.OfType<Stroke>().First(stroke => stroke.Ink == Ink.Muted)))];

    /// <summary>The marks of points or runs themselves, without their names.</summary>
    public static IEnumerable<Thing> Things(Picture picture, string under) =>
        picture.Marks.OfType<Thing>().Where(thing => !thing.IsRest && thing.Path.StartsWith(under, StringComparison.Ordinal));

    /// <summary>Pairs of texts that lie on each other by more than a tolerance in points.</summary>
    public IEnumerable<string> OverlappingTexts(double tolerance) =>
        from one in Enumerable.Range(0, Texts.Count)
        from other in Enumerable.Range(one + 1, Texts.Count - one - 1)
        where Texts[one].Box.Grown(-tolerance).Overlaps(Texts[other].Box)
        select $"{Texts[one].Text} / {Texts[other].Text}";

    /// <summary>Names that lie on symbols by more than a tolerance in points.</summary>
    public IEnumerable<string> LabelsOnSymbols(double tolerance) =>
        from label in Labels
        from symbol in Symbols
        where label.Box.Grown(-tolerance).Overlaps(symbol.Box)
        select $"{label.Path} / {symbol.Path}";

    /// <summary>Symbols that lie on each other by more than a tolerance in points.</summary>
    public IEnumerable<string> OverlappingSymbols(double tolerance) =>
        from one in Enumerable.Range(0, Symbols.Count)
        from other in Enumerable.Range(one + 1, Symbols.Count - one - 1)
        where Symbols[one].Box.Grown(-tolerance).Overlaps(Symbols[other].Box)
        select $"{Symbols[one].Path} / {Symbols[other].Path}";

    /// <summary>Names that tubes pass.</summary>
    public IEnumerable<string> LabelsOnTubes() =>
        from label in Labels
        from tube in Tubes
        let box = label.Box.Grown(tube.Tube.Width / 2 - 1)
        where Pieces(tube.Tube).Any(piece => box.IsCrossedBy(piece.From, piece.To))
        select $"{label.Path} / {tube.Path}";

    /// <summary>Tubes that cross or touch each other where neither ends: farther than a distance from the ends of both.</summary>
    public IEnumerable<string> CrossingTubes(double fromEnds)
    {
        var whole = Tubes.Select(tube => (tube.Path, Line: WayLine.Trimmed(tube.Tube.Spots, fromEnds), tube.Tube.Width)).Where(tube => !tube.Line.IsEmpty)
            .Select(tube => (tube.Path, tube.Line, tube.Width, Box: Box.Of(tube.Line).Grown(tube.Width / 2))).ToList();
        return from one in Enumerable.Range(0, whole.Count)
               from other in Enumerable.Range(one + 1, whole.Count - one - 1)
               where whole[one].Box.Overlaps(whole[other].Box)
               // Tubes of a tree run along the sheet's edges, so that a tube is its pieces' boxes.
               where Boxes(whole[one].Line, whole[one].Width).Any(box => Boxes(whole[other].Line, whole[other].Width).Any(there => box.Overlaps(there)))
               select $"{whole[one].Path} / {whole[other].Path}";
    }

    static IEnumerable<Box> Boxes(IReadOnlyList<Spot> line, double width) => Enumerable.Range(1, line.Count - 1).Select(at => Box.Of([line[at - 1], line[at]]).Grown(width / 2));

    static IEnumerable<(Spot From, Spot To)> Pieces(Stroke stroke) => Enumerable.Range(1, stroke.Spots.Length - 1).Select(at => (stroke.Spots[at - 1], stroke.Spots[at]));

    static IEnumerable<Mark> All(IEnumerable<Mark> marks) => marks.SelectMany(mark => mark is Thing thing ? All(thing.Marks) : [mark]);

    static Box BoxOf(Words words)
    {
        var width = Lettering.Width(words.Text, words.Size, words.IsBold);
        var left = words.Anchor switch { TextAnchor.End => words.At.X - width, TextAnchor.Middle => words.At.X - width / 2, _ => words.At.X };
        return Box.At(left, words.At.Y - Lettering.Ascent * words.Size, width, (Lettering.Ascent + Lettering.Descent) * words.Size);
    }
}
