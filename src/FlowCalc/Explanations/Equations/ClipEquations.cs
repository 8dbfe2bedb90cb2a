using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Clips and sleeves along a run.</summary>
internal static class ClipEquations
{
    const string Practice = "common practice, no source", Table = "MIL-H-8891A table II for steel from 1/4 in (second-hand), aircraft handbooks for the rest (from memory)";

    static readonly EquationSymbol
        Spacing = Of("d", "largest distance between clips", QuantityKind.Length),
        Outside = Of("D", "outside diameter; the bore where it is not known", QuantityKind.Length),
        ClipPlace = Of("s", "place of the clip along the run", QuantityKind.Length),
        StraightStart = Of("s1", "where the straight begins along the run", QuantityKind.Length),
        StraightEnd = Of("s2", "where it ends", QuantityKind.Length),
        FirstFactor = Plain("f1", "1, or 0.8 where the first of the two clips is beside a tee or fitting that the tube carries"),
        LastFactor = Plain("f2", "the same of the last of the two"),
        Gap = Of("g", "between two clips that fittings or bends fix", QuantityKind.Length),
        Between = Plain("n", "clips between the two");

    public static readonly Equation TableSpacing = new()
    {
        Id = "clip-spacing",
        Name = "largest distance between clips by outside diameter and material, in proportion between rows of the table",
        Template = "{d1} + ({d2} - {d1})·({D} - {D1})/({D2} - {D1})",
        Symbols =
        [
            Spacing, Of("d1", "distance of the row below; 0 below the first", QuantityKind.Length), Of("d2", "distance of the row above", QuantityKind.Length), Outside,
            Of("D1", "outside diameter of the row below; 0 below the first", QuantityKind.Length), Of("D2", "outside diameter of the row above", QuantityKind.Length),
        ],
        Range = "up to the last row of the table",
        Source = Table,
    };

    public static readonly Equation LargestSpacing = new()
    {
        Id = "clip-spacing-largest",
        Name = "largest distance between clips of a tube over the last row of the table",
        Template = "{d1}",
        Symbols = [Spacing, Of("d1", "distance of the last row", QuantityKind.Length)],
        Range = "beyond the last row of the table",
        Source = Table,
    };

    public static readonly Equation UsualSpacing = new()
    {
        Id = "clip-spacing-usual",
        Name = "largest distance between clips of copper, plastic, or a material that is not known",
        Template = "min({d1}, 0.3)",
        Symbols = [Spacing, Of("d1", "distance by the table of aluminium, the least of all", QuantityKind.Length)],
        Range = "any tube but steel and aluminium",
        Source = Practice,
    };

    public static readonly Equation Behind = new()
    {
        Id = "clip-behind",
        Name = "clip at the start of a straight",
        Template = "{s1} + 0.1",
        Symbols = [ClipPlace, StraightStart],
        Range = "a straight over 200 mm",
        Source = Practice,
    };

    public static readonly Equation Before = new()
    {
        Id = "clip-before",
        Name = "clip at the end of a straight",
        Template = "{s2} - 0.1",
        Symbols = [ClipPlace, StraightEnd],
        Range = "a straight over 200 mm",
        Source = Practice,
    };

    public static readonly Equation Middle = new()
    {
        Id = "clip-in-the-middle",
        Name = "clip of a short straight",
        Template = "{s1} + ({s2} - {s1})/2",
        Symbols = [ClipPlace, StraightStart, StraightEnd],
        Range = "a straight of 20 to 200 mm; a shorter one has no room for a clip",
        Source = Practice,
    };

    public static readonly Equation Spans = new()
    {
        Id = "clips-between",
        Name = "fewest clips between two that are fixed",
        Template = "1 + max(0, ceil({g}/{d}·(1 - 1e-9) - {f1} - {f2}))",
        Symbols = [Between, Gap, Spacing, FirstFactor, LastFactor],
        Range = "a gap that is too long for one span",
        Source = "a fifth less beside a fitting that the tube carries: MIL-H-8891A 3.11 (second-hand)",
    };

    public static readonly Equation Span = new()
    {
        Id = "clip-span",
        Name = "span between clips; the first and the last are f1 and f2 times as long",
        Template = "{g}/({f1} + {f2} + {n} - 1)",
        Symbols = [Of("u", "span", QuantityKind.Length), Gap, FirstFactor, LastFactor, Between],
        Range = "a gap that is too long for one span",
        Source = "equal division",
    };

    public static readonly Equation Count = new()
    {
        Id = "clip-count",
        Name = "clips of a run that have a place",
        Kind = EquationKind.Sum,
        Template = "Σ n_i",
        Symbols = [Plain("N", "clips"), Plain("n_i", "clips that fittings and bends fix, then those of each gap between them")],
        Range = "a run whose clips the document does not place",
        Source = "counting",
    };

    public static readonly Equation SleeveLength = new()
    {
        Id = "sleeve-length",
        Name = "length of a sleeve, 50 mm over the hot place at each side as far as the run goes",
        Template = "min({L}, {s2} + 0.05) - max(0, {s1} - 0.05)",
        Symbols = [Of("l", "length of the sleeve", QuantityKind.Length), Of("L", "length of the run", QuantityKind.Length), Of("s2", "where the hot place ends along the run", QuantityKind.Length), Of("s1", "where it begins", QuantityKind.Length)],
        Range = "a hot place that is sleeved",
        Source = Practice,
    };

    public static readonly Equation SleeveInside = new()
    {
        Id = "sleeve-inside",
        Name = "least inside diameter of a sleeve",
        Template = "{D} + 0.001",
        Symbols = [Of("d", "inside diameter", QuantityKind.Length), Outside],
        Range = "a hot place that is sleeved",
        Source = Practice,
    };
}
