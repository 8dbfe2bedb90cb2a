using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Sums along the way and at points.</summary>
internal static class PathEquations
{
    const string Energy = "losses of total pressure in series add up";

    public static readonly Equation DropOfRun = new()
    {
        Id = "drop-of-run",
        Name = "drop from the point that feeds a run to its end",
        Kind = EquationKind.Sum,
        Template = "Σ Δp_i",
        Symbols = [Drop, Drop.As("Δp_i", "each drop of the run, in the order of its steps")],
        Range = "any run",
        Source = Energy,
    };

    public static readonly Equation EndPressure = new()
    {
        Id = "end-pressure",
        Name = "total pressure at the end of a run",
        Template = "{p1} - {Δp}",
        Symbols =
        [
            Of("p2", "gauge total pressure at the end", QuantityKind.Pressure), Of("p1", "gauge total pressure at the point that feeds it, before that point's own loss", QuantityKind.Pressure),
            Drop.As("Δp", "drop of the run"),
        ],
        Range = "any run",
        Source = Energy,
    };

    public static readonly Equation DropOfPath = new()
    {
        Id = "drop-of-path",
        Name = "whole drop from the supply to a nozzle, by kind: outlet, tube, bends, tees, fittings, bore changes, rise",
        Kind = EquationKind.Sum,
        Template = "Σ Δp_i",
        Symbols = [Drop, Drop.As("Δp_i", "sum of one kind over the runs on the way")],
        Range = "any nozzle",
        Source = Energy,
    };

    public static readonly Equation MassBalance = new()
    {
        Id = "mass-balance",
        Name = "what enters a point leaves it",
        Kind = EquationKind.Sum,
        Template = "Σ m_i",
        Symbols = [MassFlow.As("m", "mass flow into the point"), MassFlow.As("m_i", "mass flow of each run that leaves it, in the document's order")],
        Range = "any point",
        Source = "conservation of mass",
    };
}
