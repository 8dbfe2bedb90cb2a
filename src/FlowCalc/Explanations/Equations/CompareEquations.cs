using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Layouts held against each other.</summary>
internal static class CompareEquations
{
    const string Choice = "a choice of this project";

    static readonly EquationSymbol
        Deviation = Plain("d", "deviation of the worst nozzle from its wanted share: by mass over the cases of a discharge, else by flow"),
        Badness = Plain("b", "how bad that is"),
        Steps = Plain("n", "the number in whole steps");

    public static readonly Equation PressureDifference = new()
    {
        Id = "pressure-difference",
        Name = "pressure at a nozzle less that of the base",
        Template = "{p} - {p0}",
        Symbols = [Of("Δ", "difference", Quantities.QuantityKind.Pressure), Absolute("p", "pressure in this layout"), Absolute("p0", "pressure in the base")],
        Range = "a nozzle that both have",
        Source = "definition",
    };

    public static readonly Equation Difference = new()
    {
        Id = "difference",
        Name = "a nozzle's figure less that of the base",
        Template = "{x} - {x0}",
        Symbols = [Figure("Δ", "difference"), Figure("x", "figure in this layout"), Figure("x0", "figure in the base")],
        Range = "a nozzle that both have",
        Source = "definition",
    };

    public static readonly Equation Ratio = new()
    {
        Id = "ratio",
        Name = "a nozzle's figure over that of the base, less 1",
        Template = "{x}/{x0} - 1",
        Symbols = [Plain("q", "relative difference"), Figure("x", "figure in this layout"), Figure("x0", "figure in the base")],
        Range = "a nozzle that both have, where the base's figure is over 0",
        Source = "definition",
    };

    public static readonly Equation BadnessOver = new()
    {
        Id = "badness-over",
        Name = "how bad too large a share is",
        Template = "{d}",
        Symbols = [Badness, Deviation],
        Range = "deviations of 0 and more",
        Source = Choice,
    };

    public static readonly Equation BadnessUnder = new()
    {
        Id = "badness-under",
        Name = "how bad too small a share is: by how many times more is wanted, so that half is as bad as twice as much",
        Template = "1/(1 + {d}) - 1",
        Symbols = [Badness, Deviation],
        Range = "deviations from -1 to 0; a nozzle that gets nothing is worse than any other",
        Source = Choice,
    };

    public static readonly Equation RankSteps = new()
    {
        Id = "rank-steps",
        Name = "a number by which layouts are ranked, in whole steps: what differs by less is the error of the solve, not the design's",
        Template = "round({x}/{w})",
        Symbols = [Steps, Figure("x", "the number"), Figure("w", "width of a step")],
        Range = "badness in steps of 0.0001, times in steps of 1 ms; halves go to the even step",
        Source = Choice,
    };

    public static readonly Equation Behind = new()
    {
        Id = "rank-behind",
        Name = "by how much a layout is behind the one before it, in the first of these in which the two differ: no flow, verdict, places that fail, places warned of, badness, cases never done, time of the slowest case",
        Template = "{n} - {n0}",
        Symbols = [Plain("Δ", "by how much"), Steps, Plain("n0", "that of the layout before it")],
        Range = "verdicts count pass 0, note 1, warn 2, fail 3; a layout without a flow 1, one with it 0",
        Source = Choice,
    };
}
