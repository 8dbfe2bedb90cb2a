using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>A piece of tube: where it ends in its fittings, what is cut, where it is bent.</summary>
internal static class PieceEquations
{
    const string Lengths = "lengths in series add up";

    static readonly EquationSymbol
        Allowance = Of("a", "tube beyond the place of a point or fitting; negative where it stops short of the centre", QuantityKind.Length),
        StartPlace = Of("s1", "place of its start along the run", QuantityKind.Length),
        StartAllowance = Of("a1", "allowance at its start", QuantityKind.Length),
        ArcPlace = Of("s", "place along the run where the arc begins", QuantityKind.Length);

    public static readonly Equation Insertion = new()
    {
        Id = "allowance-insertion",
        Name = "allowance at a fitting whose place is that of its face: the depth to which the tube goes in",
        Template = "{i}",
        Symbols = [Allowance, Of("i", "insertion of the run's joint, else of the point's, else of the whole document", QuantityKind.Length)],
        Range = "a joint without centreToStop",
        Source = "geometry; the depth belongs to the make of the fitting and is the document's",
    };

    public static readonly Equation Stop = new()
    {
        Id = "allowance-stop",
        Name = "allowance at a fitting whose place is that of its centre",
        Template = "-{c}",
        Symbols = [Allowance, Of("c", "centreToStop, from the centre to where the tube stops", QuantityKind.Length)],
        Range = "a joint or fitting with centreToStop",
        Source = "geometry; the distance belongs to the make of the fitting and is the document's",
    };

    public static readonly Equation HalfLength = new()
    {
        Id = "allowance-half-length",
        Name = "allowance at a fitting in a run of which only the length is given",
        Template = "-{b}/2",
        Symbols = [Allowance, Of("b", "length of the fitting's bore", QuantityKind.Length)],
        Range = "a fitting without centreToStop",
        Source = "an assumption of this project: either tube stops at an end of the bore",
    };

    public static readonly Equation PlaceAlongRun = new()
    {
        Id = "place-along-run",
        Name = "place along the developed centre line where an arc begins",
        Kind = EquationKind.Sum,
        Template = "Σ l_i",
        Symbols = [ArcPlace, Of("l_i", "each straight and each arc before it", QuantityKind.Length)],
        Range = "a run that is given by its corners",
        Source = Lengths,
    };

    public static readonly Equation ArcEnd = new()
    {
        Id = "arc-end",
        Name = "place along the run where an arc ends",
        Template = "{s} + {a}",
        Symbols = [Of("e", "place of its end", QuantityKind.Length), ArcPlace, Of("a", "length of the arc", QuantityKind.Length)],
        Range = "a run that is given by its corners",
        Source = Lengths,
    };

    public static readonly Equation Exact = new()
    {
        Id = "piece-length",
        Name = "length of a finished piece",
        Template = "{s2} - {s1} + {a1} + {a2}",
        Symbols = [Of("l", "length along the centre line", QuantityKind.Length), Of("s2", "place of its end along the run", QuantityKind.Length), StartPlace, StartAllowance, Of("a2", "allowance at its end", QuantityKind.Length)],
        Range = "any piece; no tube is left where it is not over 0",
        Source = Lengths,
    };

    public static readonly Equation Cut = new()
    {
        Id = "cut-length",
        Name = "cut length, up to the next whole millimetre",
        Template = "ceil(1000·{l} - 1e-6)/1000",
        Symbols = [Of("c", "cut length", QuantityKind.Length), Of("l", "length of the finished piece", QuantityKind.Length)],
        Range = "any piece; a whole millimetre but for rounding stays it",
        Source = "a rule of this project: what is too long can be filed off",
    };

    public static readonly Equation Sawn = new()
    {
        Id = "sawn-length",
        Name = "length to saw off the stock",
        Template = "{c} + 2·{q}",
        Symbols = [Of("w", "sawn length", QuantityKind.Length), Of("c", "cut length", QuantityKind.Length), Of("q", "what squaring takes from an end", QuantityKind.Length)],
        Range = "any piece",
        Source = Lengths,
    };

    public static readonly Equation Mark = new()
    {
        Id = "bend-mark",
        Name = "mark where the arc begins, from the piece's start, with the tube in the fitting counted",
        Template = "{s} - {s1} + {a1}",
        Symbols = [Of("m", "mark", QuantityKind.Length), ArcPlace, StartPlace, StartAllowance],
        Range = "a bend that has a place; a bender's own offset is not in it",
        Source = Lengths,
    };

    public static readonly Equation Straight = new()
    {
        Id = "straight-of-piece",
        Name = "straight between two arcs of a piece, or behind the last; that before the first is its mark",
        Template = "{s2} - {e}",
        Symbols = [Of("s", "straight", QuantityKind.Length), Of("s2", "place along the run where the next arc begins, or the tube ends", QuantityKind.Length), Of("e", "place where the arc before ends", QuantityKind.Length)],
        Range = "a piece with bends that have a place",
        Source = Lengths,
    };

    public static readonly Equation TubeEnd = new()
    {
        Id = "tube-end",
        Name = "place along the run where the tube of a piece ends",
        Template = "{s2} + {a2}",
        Symbols = [Of("s", "place of the tube's end", QuantityKind.Length), Of("s2", "place of the point or fitting", QuantityKind.Length), Of("a2", "allowance there", QuantityKind.Length)],
        Range = "any piece",
        Source = Lengths,
    };
}
