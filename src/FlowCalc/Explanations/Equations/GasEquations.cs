using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Runs and nozzles of a gas or of an agent that boils.</summary>
internal static class GasEquations
{
    const string Equilibrium = "homogeneous equilibrium model: one speed, equilibrium, constant enthalpy; momentum balance of a run of constant bore";

    static readonly EquationSymbol
        StartDensity = Of("ρ1", "density just inside the start", QuantityKind.Density),
        EndDensity = Of("ρ2", "density just inside the end", QuantityKind.Density),
        Gravity = Of("g", "standard acceleration of free fall", QuantityKind.Acceleration),
        Height = Of("z", "height of the end over the start against effective gravity, in lengths of standing still", QuantityKind.Length);

    public static readonly Equation MassFlux = new()
    {
        Id = "mass-flux",
        Name = "mass flux in a run",
        Template = "{m}/({n}·π/4·{D}²)",
        Symbols = [Flux, MassFlow, Plain("n", "equal runs side by side: the outlets of several bottles"), Bore],
        Range = "any flow",
        Source = "definition",
    };

    public static readonly Equation LosslessStep = new()
    {
        Id = "lossless-step",
        Name = "static pressure just inside an end of a run, from the total pressure of the point",
        Kind = EquationKind.Implicit,
        Template = "{W0} - {W} = {G}²/(2·{ρ}²)",
        Symbols =
        [
            Absolute("p", "static pressure just inside"), Absolute("p0", "total pressure of the point"), Si("W0", "W = ∫dp/ρ of the states at p0", "J/kg"),
            Si("W", "the same at p", "J/kg"), Flux, Of("ρ", "density at p", QuantityKind.Density),
        ],
        Range = "below the local speed of sound",
        Source = "energy balance without loss along the same path: L. Euler 1757, D. Bernoulli 1738",
    };

    public static readonly Equation ChokedEnd = new()
    {
        Id = "choked-end",
        Name = "static pressure at the end of a choked run: where the flux is the greatest that the path can pass there",
        Kind = EquationKind.Implicit,
        Template = "{G}² = {ρ}·{p}/{c}",
        Symbols = [Absolute("p", "static pressure just inside the end"), Flux, Of("ρ", "density at p", QuantityKind.Density), Plain("c", "d ln ρ/d ln p along the path at p")],
        Range = "a choked run; at the boundary where boiling begins the flux lies between that of either side",
        Source = "G² = -dp/dv along the path, of the momentum balance",
    };

    public static readonly Equation Weight = new()
    {
        Id = "weight-of-column",
        Name = "what the weight of a column of changing density takes from Ψ",
        Template = "{g}·{z}/{ρ0}·({ρ1}² + {ρ2}²)/2",
        Symbols = [Of("ΔΨw", "drop of Ψ", QuantityKind.Pressure), Gravity, Height, ReferenceDensity, StartDensity, EndDensity],
        Range = "the mean of both ends for the column",
        Source = "hydrostatics with the momentum balance",
    };

    public static readonly Equation LossOfRun = new()
    {
        Id = "loss-of-run",
        Name = "all losses of a run at the reference density: what they take from Ψ",
        Kind = EquationKind.Sum,
        Template = "Σ ΔΨ_i",
        Symbols = [Of("ΔΨ", "drop of Ψ by losses", QuantityKind.Pressure), Of("ΔΨ_i", "each loss of the run, in the order of its steps", QuantityKind.Pressure)],
        Range = "any run",
        Source = Equilibrium,
    };

    public static readonly Equation LossOfKind = LossOfRun with
    {
        Id = "loss-of-kind",
        Name = "losses of one kind of a run at the reference density",
        Symbols = [Of("ΔΨk", "drop of Ψ by losses of the kind", QuantityKind.Pressure), Of("ΔΨ_i", "each loss of the kind", QuantityKind.Pressure)],
    };

    public static readonly Equation RunBalance = new()
    {
        Id = "run-balance",
        Name = "momentum balance of a run: what is left of Ψ = ∫ρ dp/ρ0 just inside its end, after acceleration, losses and weight",
        Template = "{Ψ1} - {G}²/{ρ0}·ln({ρ1}/{ρ2}) - {ΔΨ} - {ΔΨw}",
        Symbols =
        [
            Of("Ψ2", "Ψ at the static pressure just inside the end", QuantityKind.Pressure), Of("Ψ1", "Ψ at that just inside the start", QuantityKind.Pressure), Flux, ReferenceDensity,
            StartDensity, EndDensity, Of("ΔΨ", "drop of Ψ by losses", QuantityKind.Pressure), Of("ΔΨw", "drop of Ψ by weight", QuantityKind.Pressure),
        ],
        Range = "steady flow; gases 2 %, agents that boil 20 to 30 % in the pressure gradient",
        Source = Equilibrium,
    };

    public static readonly Equation Rise = new()
    {
        Id = "rise-of-gas",
        Name = "drop of pressure that counts as rise",
        Template = "{g}·{z}·({ρ1} + {ρ2})/2",
        Symbols = [Drop, Gravity, Height, StartDensity, EndDensity],
        Range = "the mean of both ends for the column",
        Source = "hydrostatics",
    };

    public static readonly Equation PartOfDrop = new()
    {
        Id = "part-of-drop",
        Name = "drop of total pressure that counts as one kind: in the proportion of what each kind takes from Ψ",
        Template = "({p1} - {p2} - {Δpz})·{ΔΨk}/{ΔΨ}",
        Symbols =
        [
            Drop, Absolute("p1", "total pressure of the point that feeds the run, before its own loss; of the bottle for its outlet"), Absolute("p2", "total pressure at the end"),
            Drop.As("Δpz", "drop that counts as rise"), Of("ΔΨk", "drop of Ψ by losses of the kind", QuantityKind.Pressure), Of("ΔΨ", "that by all losses", QuantityKind.Pressure),
        ],
        Range = "losses grow along the way as the density falls",
        Source = "a convention of this project",
    };

    public static readonly Equation WholeDrop = new()
    {
        Id = "whole-drop",
        Name = "drop of total pressure where no loss takes a part of it: a regulator that throttles, or a run at rest",
        Template = "{p1} - {p2} - {Δpz}",
        Symbols =
        [
            Drop, Absolute("p1", "total pressure of the point that feeds the run; of the bottle for its outlet"), Absolute("p2", "total pressure at the end"),
            Drop.As("Δpz", "drop that counts as rise"),
        ],
        Range = "runs without loss",
        Source = "a convention of this project",
    };
}
