using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Nozzles of a gas or of an agent that boils.</summary>
internal static class GasNozzleEquations
{
    const string Isentropic = "A. J. C. B. de Saint-Venant and L. Wantzel 1839: isentropic nozzle, choked where the flux is the greatest";

    static readonly EquationSymbol
        Throat = Absolute("pt", "pressure in the throat: where the flux is the greatest, or the surroundings'"),
        Volume = Si("v", "specific volume in the throat, in equilibrium at constant entropy", "m3/kg"),
        Work = Si("w", "∫v dp from the throat to the total pressure, in equilibrium at constant entropy", "J/kg");

    public static readonly Equation Flow = new()
    {
        Id = "nozzle-flux",
        Name = "flow out of a nozzle by its mass flux",
        Template = "{CA}·{G}",
        Symbols = [MassFlow, EffectiveArea, Flux.As("G", "mass flux at discharge coefficient 1, read from the table of the agent at the total pressure")],
        Range = "any flow",
        Source = "definition of the discharge coefficient",
    };

    public static readonly Equation Expansion = new()
    {
        Id = "nozzle-expansion",
        Name = "mass flux at discharge coefficient 1 of a gas, or of an agent that boils in equilibrium",
        Template = "√(2·{w})/{v}",
        Symbols = [Flux, Throat, Volume, Work],
        Range = "the table that the flow reads gives it within about 1e-3, within 1.5 % of the pressure beside the boundary where boiling begins up to some per cent off, since its corner is rounded",
        Source = Isentropic + "; homogeneous equilibrium where it boils",
    };

    public static readonly Equation DelayedExpansion = new()
    {
        Id = "nozzle-delayed-expansion",
        Name = "mass flux at discharge coefficient 1 of an agent of which a part boils",
        Template = "√(2·({wf} + {N}·({w} - {wf})))/({vf} + {N}·({v} - {vf}))",
        Symbols =
        [
            Flux, Throat, Plain("N", "part of the equilibrium's boiling that a short nozzle gives time for; 0 where nothing boils"), Volume, Work,
            Si("vf", "specific volume in the throat where no liquid boils", "m3/kg"), Si("wf", "∫v dp where no liquid boils", "J/kg"),
        ],
        Range = Expansion.Range,
        Source = Isentropic + "; N after R. Diener and J. Schmidt 2004 (from memory)",
    };

    public static readonly Equation Closed = new()
    {
        Id = "closed-nozzle",
        Name = "a nozzle that passes nothing",
        Template = "0·{p}",
        Symbols = [MassFlow, Absolute("p", "total pressure at the nozzle, not over the surroundings'")],
        Range = "where the pressure at the nozzle is not over the surroundings'",
        Source = "no air is drawn in: a modelling choice of this project",
    };
}
