using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>What is ordered of a tube, and how it is cut from its stock.</summary>
internal static class OrderEquations
{
    static readonly EquationSymbol
        Total = Of("S", "length of all of them", QuantityKind.Length),
        Kerf = Of("k", "width of a cut", QuantityKind.Length),
        Shortest = Of("s", "shortest length of the stock", QuantityKind.Length),
        LeastBars = Plain("n", "fewest bars of the longest stock");

    public static readonly Equation TotalLength = new()
    {
        Id = "total-length",
        Name = "lengths of one tube together",
        Kind = EquationKind.Sum,
        Template = "Σ l_i",
        Symbols = [Total, Of("l_i", "each length, in the order of runs and pieces; of stock each bar or coil", QuantityKind.Length)],
        Range = "any tube",
        Source = "lengths add up",
    };

    public static readonly Equation Order = new()
    {
        Id = "order-length",
        Name = "length to order: all that is sawn, a cut each, and the spare",
        Template = "({S} + {n}·{k})·(1 + {x})",
        Symbols = [Of("o", "length to order", QuantityKind.Length), Of("S", "sawn lengths together", QuantityKind.Length), Plain("n", "pieces"), Kerf, Plain("x", "spare, as a part")],
        Range = "any tube",
        Source = "lengths add up; the usual spare from a training text (second-hand)",
    };

    public static readonly Equation Weight = new()
    {
        Id = "tube-mass",
        Name = "mass of the finished pieces",
        Template = "π/4·({Do}² - {D}²)·{S}·{ρ}",
        Symbols =
        [
            Of("M", "mass", QuantityKind.Mass), Of("Do", "outside diameter", QuantityKind.Length), Bore, Of("S", "exact lengths of the finished pieces together", QuantityKind.Length),
            Of("ρ", "density of the material", QuantityKind.Density),
        ],
        Range = "a tube whose outside diameter and material are known",
        Source = "volume of a hollow cylinder; densities are handbook values, from memory",
    };

    public static readonly Equation Filled = new()
    {
        Id = "tube-volume",
        Name = "volume inside the runs of a tube",
        Template = "π/4·{D}²·{S}",
        Symbols = [Of("V", "volume", QuantityKind.Volume), Bore, Of("S", "developed lengths of its runs together", QuantityKind.Length)],
        Range = "any tube",
        Source = "volume of a cylinder",
    };

    public static readonly Equation BarContent = new()
    {
        Id = "bar-content",
        Name = "what the pieces of one bar take of it, a cut each",
        Kind = EquationKind.Sum,
        Template = "Σ w_i",
        Symbols = [Of("c", "content", QuantityKind.Length), Of("w_i", "sawn length of a piece and a cut, each up to the next micrometre", QuantityKind.Length)],
        Range = "any bar or coil",
        Source = "lengths add up",
    };

    public static readonly Equation Offcut = new()
    {
        Id = "bar-offcut",
        Name = "what is left of a bar; the last cut may fall beyond its end",
        Template = "max(0, {l} - {c})",
        Symbols = [Of("r", "offcut", QuantityKind.Length), Of("l", "length of the bar", QuantityKind.Length), Of("c", "content", QuantityKind.Length)],
        Range = "any bar or coil",
        Source = "lengths add up",
    };

    public static readonly Equation ContentBound = new()
    {
        Id = "stock-bound-content",
        Name = "least stock by what is in it alone, up to the next length that bars add up to",
        Template = "ceil({C}·{s}/({s} + {k})/{g} - 1e-9)·{g}",
        Symbols =
        [
            Of("u", "least stock by content", QuantityKind.Length), Of("C", "sawn lengths and cuts of the pieces that fit, together", QuantityKind.Length), Shortest, Kerf,
            Of("g", "greatest length of which all lengths of the stock are whole multiples", QuantityKind.Length),
        ],
        Range = "any number of bars of each length; a bar of length l takes l and one cut, so that the shortest holds the most for its length",
        Source = "no bar holds more than its length",
    };

    public static readonly Equation LongBound = new()
    {
        Id = "stock-bound-long",
        Name = "least stock by the pieces over half the longest bar, each of which has a bar of its own",
        Kind = EquationKind.Sum,
        Template = "Σ b_i",
        Symbols = [Of("v", "least stock by long pieces", QuantityKind.Length), Of("b_i", "shortest stock that holds each of them alone", QuantityKind.Length)],
        Range = "any pieces",
        Source = "two of them do not fit into one bar",
    };

    public static readonly Equation BinBound = new()
    {
        Id = "stock-bound-bars",
        Name = "fewest bars of the longest stock",
        Template = "{h} + max(0, ceil(({R} - {F})/({l} + {k}) - 1e-9))",
        Symbols =
        [
            LeastBars, Plain("h", "pieces over half a bar that are counted by themselves"), Of("R", "content of the shorter pieces from a certain size on", QuantityKind.Length),
            Of("F", "room for them beside the long pieces", QuantityKind.Length), Of("l", "longest length of the stock", QuantityKind.Length), Kerf,
        ],
        Range = "the size from which shorter pieces count is the one that gives the most bars",
        Source = "S. Martello and P. Toth, Knapsack Problems, Wiley 1990, section 8.3, bound L2 (from memory)",
    };

    public static readonly Equation LeastStock = new()
    {
        Id = "stock-bound",
        Name = "stock below which no way of cutting goes: the largest of the bounds",
        Template = "max({u}, max({v}, {n}·{s}))",
        Symbols =
        [
            Of("p", "least stock", QuantityKind.Length), Of("u", "least stock by content", QuantityKind.Length), Of("v", "least stock by long pieces", QuantityKind.Length), LeastBars, Shortest,
        ],
        Range = "before the search, which can raise it to what is used where it has gone through every way of cutting",
        Source = "each bound holds by itself",
    };

    public static readonly Equation SpareBars = new()
    {
        Id = "spare-bars",
        Name = "further bars of the longest stock, so that all together hold what is ordered",
        Template = "ceil(max(0, {o} - {U})/{l} - 1e-9)",
        Symbols = [Plain("n", "spare bars"), Of("o", "length to order", QuantityKind.Length), Of("U", "stock used", QuantityKind.Length), Of("l", "longest length of the stock", QuantityKind.Length)],
        Range = "any stock that holds a piece",
        Source = "lengths add up",
    };
}
