using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>What a study of tolerances makes of its samples.</summary>
internal static class ToleranceEquations
{
    const string Wilson = "E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209–212 (from memory)", Interval = "independent samples; those of a Latin hypercube rather err less";

    static readonly EquationSymbol
        Samples = Plain("N", "samples that have the figure"),
        All = Plain("N", "all samples"),
        Part = Plain("q", "part of the samples in which it is so"),
        Score = Plain("z", "standard score of a confidence of 95 %"),
        Rank = Plain("h", "place among the samples in rising order, from 1"),
        Between = Plain("S", "sum of squares between the means of the bins, in the figure's SI unit squared"),
        Whole = Plain("T", "sum of squares of all samples about their mean, in the figure's SI unit squared"),
        Within = Plain("W", "mean square within the bins, in the figure's SI unit squared"),
        Bins = Plain("B", "bins of equal chance of the input, about √N of them");

    public static readonly Equation PercentileRank = new()
    {
        Id = "percentile-rank",
        Name = "place of a percentile among the samples in rising order",
        Template = "({N} + 1/3)·{y} + 1/3",
        Symbols = [Rank, Samples, Plain("y", "part of the samples that lies below")],
        Range = "places from 1 to N; beyond them the least or the greatest sample is taken",
        Source = "R. J. Hyndman, Y. Fan, American Statistician 50 (1996) 361–365, definition 8",
    };

    public static readonly Equation Percentile = new()
    {
        Id = "percentile",
        Name = "percentile, in proportion between the two samples beside its place",
        Template = "{a} + ({h} - {j})·({b} - {a})",
        Symbols = [Figure("x", "percentile"), Figure("a", "sample at place j"), Rank, Plain("j", "whole part of h"), Figure("b", "sample behind it")],
        Range = "any spread; an instant that never comes counts as later than any",
        Source = "R. J. Hyndman, Y. Fan, American Statistician 50 (1996) 361–365, definition 8",
    };

    public static readonly Equation ChancePart = new()
    {
        Id = "chance",
        Name = "part of the samples in which something is so",
        Template = "{k}/{N}",
        Symbols = [Part, Plain("k", "samples in which it is so"), All],
        Range = "any",
        Source = "definition",
    };

    public static readonly Equation ChanceLow = new()
    {
        Id = "chance-low",
        Name = "lower end of the interval of a chance",
        Template = "({q} + {z}²/(2·{N}) - {z}·√({q}·(1 - {q})/{N} + {z}²/(4·{N}²)))/(1 + {z}²/{N})",
        Symbols = [Plain("l", "lower end"), Part, Score, All],
        Range = Interval + "; 0 where it is so in none",
        Source = Wilson,
    };

    public static readonly Equation ChanceHigh = new()
    {
        Id = "chance-high",
        Name = "upper end of the interval of a chance",
        Template = "({q} + {z}²/(2·{N}) + {z}·√({q}·(1 - {q})/{N} + {z}²/(4·{N}²)))/(1 + {z}²/{N})",
        Symbols = [Plain("u", "upper end"), Part, Score, All],
        Range = Interval + "; 1 where it is so in all",
        Source = Wilson,
    };

    public static readonly Equation WithinBins = new()
    {
        Id = "index-within",
        Name = "mean square of a figure within the bins of an input",
        Template = "max(0, {T} - {S})/({N} - {B})",
        Symbols = [Within, Whole, Between, Samples, Bins],
        Range = "four samples a bin and more",
        Source = "analysis of variance",
    };

    public static readonly Equation Index = new()
    {
        Id = "first-order-index",
        Name = "part of a figure's variance that one input alone explains, Var(E[y | x])/Var(y), with the differences that chance makes taken off",
        Template = "({S} - ({B} - 1)·{W})/({T} + {W})",
        Symbols = [Plain("η", "first-order index"), Between, Bins, Within, Whole],
        Range = "a little below 0 by chance where the input matters little; too low by about 1/B² of it, since what changes within a bin counts to the other inputs",
        Source = "index of Sobol' from given data: E. Plischke, E. Borgonovo, C. L. Smith, Eur. J. Oper. Res. 226 (2013) 536–550; ω² of W. L. Hays, Statistics, 1963 (both from memory)",
    };

    public static readonly Equation IndexError = new()
    {
        Id = "index-error",
        Name = "standard error of an index, by the jackknife",
        Template = "√(({G} - 1)/{G}·{Q})",
        Symbols = [Plain("σ", "standard error"), Plain("G", "groups of samples, each left out once"), Plain("Q", "sum of the squared differences of the indices without each group from their mean")],
        Range = "any index",
        Source = "B. Efron, The Jackknife, the Bootstrap and Other Resampling Plans, SIAM 1982 (from memory)",
    };
}
