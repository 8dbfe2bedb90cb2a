using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Dividing tees.</summary>
internal static class TeeEquations
{
    const string RunFed =
        "D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 16 (from memory; coefficients confirmed in an open Modelica library of thermal systems); "
        + "the threaded part chosen to meet the tables for screwed tees in the HVAC Pump Handbook, McGraw-Hill 2006, table 3.10: a judgement";

    static readonly EquationSymbol Share = Plain("w", "the leg's flow over the inlet's");

    public static readonly Equation FlowShare = new()
    {
        Id = "tee-share",
        Name = "share of a tee's inlet that leaves by a leg",
        Template = "{m}/{m0}",
        Symbols = [Share, MassFlow.As("m", "mass flow of the leg"), MassFlow.As("m0", "mass flow into the tee")],
        Range = "a dividing tee",
        Source = "definition",
    };

    public static readonly Equation Run = new()
    {
        Id = "tee-run",
        Name = "loss coefficient from the inlet to the straight leg of a tee fed through its run, on the inlet's head",
        Template = "0.62·{w}² - 0.98·{w} + 0.36 + 0.03·{w}^8 + {x}·{w}²",
        Symbols = [Coefficient, Share, Plain("x", "0 smooth, 0.87 threaded")],
        Range = "90° tees; real ones scatter by ±0.15; below 0 pressure is regained",
        Source = RunFed + "; re-based on outlet over inlet flow",
    };

    public static readonly Equation Branch = new()
    {
        Id = "tee-branch",
        Name = "loss coefficient from the inlet to the branch of a tee fed through its run, on the inlet's head",
        Template = "0.81·{w}² - 1.13·{w} + 1 + {w}²/β^4·(1.12·β - 1.08·β³ + 0.57) + {x}·{w}² + e·{w}²",
        With = "β = min({Db}/{D0}, 1), e = (1 - 1/max({Db}/{D0}, 1)²)²",
        Symbols =
        [
            Coefficient, Share, Of("Db", "bore of the branch", QuantityKind.Length), Of("D0", "bore of the inlet", QuantityKind.Length), Plain("x", "0 smooth, 1.1 threaded"),
        ],
        Range = "90° tees with a sharp edge, a branch no wider than the run; wider, β = 1 and a sudden expansion behind it, a judgement; ±0.15",
        Source = RunFed,
    };

    public static readonly Equation Bullhead = new()
    {
        Id = "tee-bullhead",
        Name = "loss coefficient from the branch of a tee to one of its straight outlets, on the inlet's head",
        Template = "1 + {k}·({w}·({D0}/{D})²)²",
        Symbols =
        [
            Coefficient, Plain("k", "0.3 smooth, 1.5 threaded"), Share, Of("D0", "bore of the inlet", QuantityKind.Length), Of("D", "bore of the outlet", QuantityKind.Length),
        ],
        Range = "90° tees fed through the branch, outlets no wider than the inlet",
        Source = "I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., diagram 7-29 (form seen in an open Modelica loss library, k from memory)",
    };
}
