using System.Collections.Immutable;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Draws symbols, in the manner of graphical symbols for pipework (ISO 14617, ISO 6412, from memory); the drawing is our own.</summary>
static class SymbolMarks
{
    const double Edge = 1.2;

    /// <summary>Marks of a symbol.</summary>
    /// <param name="symbol">The symbol.</param>
    /// <param name="at">Its place.</param>
    /// <param name="along">Direction of the flow through it as a spot at distance 1 from the origin; of a supply the direction from its base to its outlet.</param>
    /// <param name="fill">Colour of a nozzle; the sheet's where none is told.</param>
    /// <param name="scale">How large; 1 is usual.</param>
    public static ImmutableArray<Mark> Of(DrawnSymbol symbol, Spot at, Spot along, Ink fill = Ink.Sheet, double scale = 1)
    {
        Spot P(double u, double v) => new(at.X + scale * (u * along.X - v * along.Y), at.Y + scale * (u * along.Y + v * along.X));
        Stroke Line(double width, params ReadOnlySpan<Spot> spots) => new([.. spots], Ink.Line, width);
        Patch Area(Ink area, params ReadOnlySpan<Spot> spots) => new([.. spots], area, Ink.Line, Edge);
        return symbol switch
        {
            // A shell with a domed end, its neck and valve towards the tube.
            DrawnSymbol.Bottle => [
                Area(Ink.Sheet, P(-46, -8), P(-44.5, -9.5), P(-17, -9.5), P(-13, -8), P(-10.5, -5), P(-9.5, -3), P(-9.5, 3), P(-10.5, 5), P(-13, 8), P(-17, 9.5), P(-44.5, 9.5), P(-46, 8)),
                Line(0.8, P(-40, -9.5), P(-40, 9.5)),
                Area(Ink.Line, P(-9.5, -2.6), P(-9.5, 2.6), P(-6.5, 2.6), P(-6.5, -2.6)),
                Area(Ink.Sheet, P(-6.5, -4), P(0, 4), P(0, -4), P(-6.5, 4))],
            DrawnSymbol.HeldSupply => [
                new Disc(P(-10, 0), 10 * scale, Ink.Sheet, Ink.Line, Edge),
                Area(Ink.Line, P(-14, -5), P(-4, 0), P(-14, 5))],
            DrawnSymbol.Tee => [new Disc(at, 4.2 * scale, Ink.Line, Ink.Sheet, 0.8)],
            DrawnSymbol.Bullhead => [new Patch([P(-4.5, -4.5), P(4.5, -4.5), P(4.5, 4.5), P(-4.5, 4.5)], Ink.Line, Ink.Sheet, 0.8)],
            DrawnSymbol.Junction => [new Disc(at, 4.2 * scale, Ink.Sheet, Ink.Line, 1.4)],
            DrawnSymbol.Reducer => [Area(Ink.Sheet, P(-5, -7), P(-5, 7), P(5, 3.2), P(5, -3.2))],
            // A body with its spray.
            DrawnSymbol.Nozzle => [Area(fill, P(-1.5, -3), P(-1.5, 3), P(3, 3), P(12, 8), P(12, -8), P(3, -3))],
            DrawnSymbol.Cap => [Line(3, P(0, -7), P(0, 7)), Line(1.2, P(3, -4.5), P(3, 4.5))],
            DrawnSymbol.Bulkhead => [Line(1.4, P(-2, -9), P(-2, 9)), Line(1.4, P(2, -9), P(2, 9))],
            DrawnSymbol.Union => [Line(1.4, P(-3, -6.5), P(-3, 6.5)), Line(2.2, P(0, -6.5), P(0, 6.5)), Line(1.4, P(3, -6.5), P(3, 6.5))],
            DrawnSymbol.Elbow => [Area(Ink.Sheet, P(-4.5, -4.5), P(4.5, -4.5), P(4.5, 4.5)), Line(1.8, P(-4.5, -4.5), P(4.5, -4.5), P(4.5, 4.5))],
            DrawnSymbol.Valve => [Area(Ink.Sheet, P(-7, -5.5), P(7, 5.5), P(7, -5.5), P(-7, 5.5))],
            _ => [Area(Ink.Sheet, P(-6, 0), P(0, -6), P(6, 0), P(0, 6))],
        };
    }

    /// <summary>The box of a symbol.</summary>
    /// <inheritdoc cref="Of" path="/param"/>
    public static Box BoxOf(DrawnSymbol symbol, Spot at, Spot along, double scale = 1) => BoxOf(Of(symbol, at, along, Ink.Sheet, scale));

    /// <summary>The box of marks, with half the width of their edges.</summary>
    public static Box BoxOf(ImmutableArray<Mark> marks)
    {
        var box = Box.Nothing;
        foreach (var mark in marks)
            box = box.With(mark switch
            {
                Disc disc => new Box(disc.Centre.X, disc.Centre.Y, disc.Centre.X, disc.Centre.Y).Grown(disc.Radius + disc.EdgeWidth / 2),
                Patch patch => Box.Of(patch.Spots).Grown(patch.EdgeWidth / 2),
                Stroke stroke => Box.Of(stroke.Spots).Grown(stroke.Width / 2),
                _ => throw new InvalidOperationException($"A symbol has a {mark.GetType().Name}."),
            });
        return box;
    }
}
