using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>What sizes come to in an objective's measure.</summary>
internal static class SizeEquations
{
    static readonly EquationSymbol
        MassPerMetre = Si("w", "mass of a metre of tube", "kg/m"),
        RunLength = Of("L", "length of the run", QuantityKind.Length),
        Deviation = Plain("d", "deviation of a nozzle from its wanted share");

    public static readonly Equation Cost = new()
    {
        Id = "cost-of-run",
        Name = "what the tube of a run costs",
        Template = "{c}·{L}",
        Symbols = [Plain("v", "cost in the stock's currency"), Si("c", "cost of a metre", "1/m"), RunLength],
        Range = "free runs; offcuts and fittings are not counted",
        Source = "the request's costPerMetre",
    };

    public static readonly Equation MetreMass = new()
    {
        Id = "mass-of-a-metre",
        Name = "mass of a metre of tube",
        Template = "{ρ}·π/4·({Do}² - {D}²)",
        Symbols = [MassPerMetre, Of("ρ", "density of the metal", QuantityKind.Density), Of("Do", "outside diameter", QuantityKind.Length), Of("D", "bore", QuantityKind.Length)],
        Range = "a tube whose massPerMetre the request does not state",
        Source = "volume of a hollow cylinder; densities are handbook values, from memory",
    };

    public static readonly Equation RunMass = new()
    {
        Id = "mass-of-run",
        Name = "mass of the tube of a run",
        Template = "{w}·{L}",
        Symbols = [Of("v", "mass", QuantityKind.Mass), MassPerMetre, RunLength],
        Range = "free runs; what is in the tube is not counted",
        Source = "definition",
    };

    public static readonly Equation Exchanged = new()
    {
        Id = "pieces-exchanged",
        Name = "free runs and nozzles that are exchanged",
        Kind = EquationKind.Sum,
        Template = "Σ n_i",
        Symbols = [Plain("V", "pieces"), Plain("n_i", "of each free run in the document's order, then of each free nozzle: 1 where it is another than before, else 0")],
        Range = "runs in a tube of another name, bore or roughness; nozzles of another type, holes or K-factor",
        Source = "counting",
    };

    public static readonly Equation Sum = new()
    {
        Id = "objective-sum",
        Name = "objective of the whole",
        Kind = EquationKind.Sum,
        Template = "Σ v_i",
        Symbols = [Figure("V", "cost or mass of all free runs"), Figure("v_i", "that of each, in the document's order")],
        Range = "least cost and least mass",
        Source = "definition",
    };

    public static readonly Equation NozzleDeviation = new()
    {
        Id = "deviation-of-nozzle",
        Name = "deviation of a nozzle's share from what the document wants",
        Template = "{x}/{x0} - 1",
        Symbols = [Deviation, Plain("x", "part of the whole flow"), Plain("x0", "wanted part, that of the document as it was sent")],
        Range = "a nozzle of which something is wanted",
        Source = "definition",
    };

    public static readonly Equation Largest = new()
    {
        Id = "largest-deviation",
        Name = "deviation of the nozzle that is furthest from its share",
        Template = "|{d}|",
        Symbols = [Plain("V", "largest deviation"), Deviation],
        Range = "the nozzle at which it is largest",
        Source = "definition",
    };

    public static readonly Equation Gap = new()
    {
        Id = "objective-gap",
        Name = "how far the sizes may be from the best",
        Template = "max(0, {V} - {B})",
        Symbols = [Figure("g", "gap"), Figure("V", "objective with the sizes"), Figure("B", "bound, which no sizes that meet the wish are below")],
        Range = "any objective",
        Source = "definition",
    };
}
