using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>A run along its corners: legs, turns, planes of bends, developed length.</summary>
internal static class RouteEquations
{
    const string Vectors = "plane and solid geometry", Square = "m2";

    const string Across = "({bx}·({ny}·{mz} - {nz}·{my}) + {by}·({nz}·{mx} - {nx}·{mz}) + {bz}·({nx}·{my} - {ny}·{mx}))", Along = "{nx}·{mx} + {ny}·{my} + {nz}·{mz}";

    static readonly EquationSymbol
        Setback = Of("t", "setback, from the corner back to where the arc begins", QuantityKind.Length),
        Arc = Of("a", "length of the arc", QuantityKind.Length),
        Rotation = Of("ψ", "angle from the plane of the bend before to this one's, right-handed along the tube", QuantityKind.Angle);

    public static readonly Equation LegPart = new()
    {
        Id = "leg-part",
        Name = "part of a leg along one axis of the layout: x forward, y left, z up",
        Template = "{c2} - {c1}",
        Symbols = [Of("d", "part of the leg", QuantityKind.Length), Of("c2", "coordinate of the corner or point at its end", QuantityKind.Length), Of("c1", "that at its start", QuantityKind.Length)],
        Range = "any leg of a run that is given by its corners",
        Source = Vectors,
    };

    public static readonly Equation LegLength = new()
    {
        Id = "leg-length",
        Name = "length of a leg from corner to corner",
        Template = "√({dx}² + {dy}² + {dz}²)",
        Symbols = [Of("l", "length of the leg", QuantityKind.Length), Part("dx"), Part("dy"), Part("dz")],
        Range = "any leg",
        Source = "Pythagoras",
    };

    public static readonly Equation PlaneNormal = new()
    {
        Id = "plane-normal",
        Name = "part along one axis of the arrow square to the plane of a bend: vector product of the legs before and behind it",
        Template = "{a1}·{b2} - {a2}·{b1}",
        Symbols =
        [
            Si("n", "part of the arrow", Square), Of("a1", "part of the leg before, along the next axis in the order x, y, z, x", QuantityKind.Length), Of("b2", "part of the leg behind, along the axis after that", QuantityKind.Length),
            Of("a2", "part of the leg before, along that axis", QuantityKind.Length), Of("b1", "part of the leg behind, along the next axis", QuantityKind.Length),
        ],
        Range = "any bend",
        Source = Vectors,
    };

    public static readonly Equation Turn = new()
    {
        Id = "bend-angle",
        Name = "angle by which a bend turns; atan2(y, x) is the angle of the point x, y",
        Template = "atan2(√({nx}² + {ny}² + {nz}²), {ax}·{bx} + {ay}·{by} + {az}·{bz})",
        Symbols = [Angle, Normal("nx"), Normal("ny"), Normal("nz"), Before("ax"), Before("ay"), Before("az"), Behind("bx"), Behind("by"), Behind("bz")],
        Range = "0.1° to 179.9°; less counts as straight on",
        Source = Vectors,
    };

    public static readonly Equation BendRotation = new()
    {
        Id = "bend-rotation",
        Name = "rotation from the plane of the bend before, about the straight between; atan2(y, x) is the angle of the point x, y",
        Template = $"atan2({Across}/{{l}}, {Along})",
        Symbols = Turned(),
        Range = "over -180° to 180°; right-handed in the direction of travel",
        Source = Vectors,
    };

    public static readonly Equation HalfTurn = new()
    {
        Id = "bend-rotation-half",
        Name = "rotation of half a turn, which has no side: it is told as +180°",
        Template = $"atan2(|{Across}|/{{l}}, {Along})",
        Symbols = Turned(),
        Range = "planes that are turned over, within 1e-6 rad",
        Source = Vectors,
    };

    public static readonly Equation BendSetback = new()
    {
        Id = "bend-setback",
        Name = "from the corner of the two straights back to where the arc begins",
        Template = "{r}·tan({θ}/2)",
        Symbols = [Setback, Radius, Angle],
        Range = "a bend below 180°",
        Source = "plane geometry: the arc touches both straights",
    };

    public static readonly Equation BendArc = new()
    {
        Id = "bend-arc",
        Name = "length of a bend's centre line",
        Template = "{r}·{θ}",
        Symbols = [Arc, Radius, Angle],
        Range = "any bend; stretch of the tube in it not counted",
        Source = "definition of the angle in rad",
    };

    public static readonly Equation BendGain = new()
    {
        Id = "bend-gain",
        Name = "how much shorter the arc is than the way round the corner",
        Template = "2·{t} - {a}",
        Symbols = [Of("g", "gain", QuantityKind.Length), Setback, Arc],
        Range = "any bend",
        Source = "plane geometry",
    };

    public static readonly Equation Straight = new()
    {
        Id = "straight-of-run",
        Name = "straight between bends: its legs less the setbacks at its ends",
        Kind = EquationKind.Sum,
        Template = "Σ l_i",
        Symbols = [Of("s", "straight", QuantityKind.Length), Of("l_i", "a leg, or a setback with its sign turned", QuantityKind.Length)],
        Range = "any run that is given by its corners",
        Source = "plane geometry",
    };

    public static readonly Equation Developed = new()
    {
        Id = "developed-length",
        Name = "developed length of a run: straights and arcs in turn",
        Kind = EquationKind.Sum,
        Template = "Σ l_i",
        Symbols = [Of("L", "developed length", QuantityKind.Length), Of("l_i", "each straight and each arc", QuantityKind.Length)],
        Range = "a run that is given by its corners; that of others is the document's",
        Source = "lengths in series add up",
    };

    static System.Collections.Immutable.ImmutableArray<EquationSymbol> Turned() =>
    [
        Rotation, .. ((string[])["bx", "by", "bz"]).Select(name => Of(name, "part of the leg between the two bends", QuantityKind.Length)),
        .. ((string[])["nx", "ny", "nz"]).Select(name => Si(name, "part of the arrow square to the plane before", Square)),
        .. ((string[])["mx", "my", "mz"]).Select(name => Si(name, "part of the arrow square to this bend's plane", Square)), Of("l", "length of the leg between them", QuantityKind.Length),
    ];

    static EquationSymbol Part(string name) => Of(name, $"its part along {name[1]}", QuantityKind.Length);

    static EquationSymbol Normal(string name) => Si(name, $"part along {name[1]} of the arrow square to the bend's plane", Square);

    static EquationSymbol Before(string name) => Of(name, $"part along {name[1]} of the leg before", QuantityKind.Length);

    static EquationSymbol Behind(string name) => Of(name, $"part along {name[1]} of the leg behind", QuantityKind.Length);
}
