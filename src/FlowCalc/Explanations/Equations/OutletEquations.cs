using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>The outlet of the bottle, and what leaves the nozzles.</summary>
internal static class OutletEquations
{
    const string Torricelli = "E. Torricelli 1643, with the discharge coefficient";

    public static readonly Equation FlowOfOne = new()
    {
        Id = "flow-of-one-bottle",
        Name = "flow through the outlet of one of several bottles",
        Template = "{m}/{n}",
        Symbols = [MassFlow.As("m1", "mass flow of one bottle"), MassFlow, Plain("n", "bottles let go together")],
        Range = "identical bottles",
        Source = "conservation of mass",
    };

    public static readonly Equation Restrictor = new()
    {
        Id = "orifice-loss",
        Name = "loss of an orifice of which nothing is regained",
        Template = "{m}·|{m}|/(2·{ρ}·({Cd}·π/4·{d}²)²)",
        Symbols = [Drop, MassFlow, Density, Plain("Cd", "discharge coefficient"), Of("d", "diameter of the hole", QuantityKind.Length)],
        Range = "a hole that does not choke",
        Source = Torricelli,
    };

    public static readonly Equation Throttled = new()
    {
        Id = "regulator",
        Name = "what a regulator takes that throttles to its set pressure",
        Template = "{p} - {pr}",
        Symbols = [Drop, Of("p", "gauge pressure in the bottle", QuantityKind.Pressure), Of("pr", "gauge set pressure", QuantityKind.Pressure)],
        Range = "where the open outlet would deliver more than the set pressure",
        Source = "a regulator that holds its set pressure",
    };

    public static readonly Equation AreaOfKFactor = new()
    {
        Id = "k-factor-area",
        Name = "discharge coefficient times area that a K-factor stands for",
        Template = "{K}·√(1000/2)",
        Symbols = [EffectiveArea, Of("K", "K-factor; 1 L/min/bar^0.5 is 5.270463e-8 m3/s/Pa^0.5, 1 US gal/min/psi^0.5 7.598054e-7", QuantityKind.KFactor)],
        Range = "K refers to 1000 kg/m3 and total pressure",
        Source = "definition of a K-factor",
    };

    public static readonly Equation AreaOfOrifice = new()
    {
        Id = "orifice-area",
        Name = "discharge coefficient times area of a nozzle's holes",
        Template = "{n}·{Cd}·π/4·{d}²",
        Symbols = [EffectiveArea, Plain("n", "holes"), Plain("Cd", "discharge coefficient"), Of("d", "diameter of a hole", QuantityKind.Length)],
        Range = "round holes",
        Source = "definition",
    };

    public static readonly Equation NozzleFlow = new()
    {
        Id = "nozzle-flow",
        Name = "flow of a liquid out of a nozzle",
        Template = "{CA}·√(2·{ρ}·{p})",
        Symbols = [MassFlow, EffectiveArea, Density, Of("p", "gauge total pressure at the nozzle", QuantityKind.Pressure)],
        Range = "a liquid that does not boil in the nozzle",
        Source = Torricelli,
    };

    public static readonly Equation DryNozzle = new()
    {
        Id = "dry-nozzle",
        Name = "a nozzle that height alone keeps dry",
        Template = "0·{p}",
        Symbols = [MassFlow, Of("p", "gauge total pressure at the nozzle, not over 0", QuantityKind.Pressure)],
        Range = "where the pressure at the nozzle is not over the surroundings'",
        Source = "no air is drawn in: a modelling choice of this project",
    };
}
