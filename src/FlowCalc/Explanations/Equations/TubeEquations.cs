using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Velocity, friction and height of straight tube.</summary>
internal static class TubeEquations
{
    const string Definition = "definition";
    const string Always = "any flow";

    public static readonly Equation Velocity = new()
    {
        Id = "mean-velocity",
        Name = "mean velocity in a bore",
        Template = "{m}/({ρ}·π/4·{D}²)",
        Symbols = [Symbols.Velocity, MassFlow, Density, Bore],
        Range = Always,
        Source = Definition,
    };

    public static readonly Equation ReynoldsNumber = new()
    {
        Id = "reynolds",
        Name = "Reynolds number",
        Template = "4·{m}/(π·{D}·{μ})",
        Symbols = [Reynolds, MassFlow, Bore, Viscosity],
        Range = Always,
        Source = Definition,
    };

    public static readonly Equation Laminar = new()
    {
        Id = "friction-laminar",
        Name = "friction factor of laminar flow",
        Template = "64/{Re}",
        Symbols = [Friction, Reynolds],
        Range = "Re to 2000",
        Source = "G. Hagen 1839, J. L. M. Poiseuille 1840: exact",
    };

    public static readonly Equation Turbulent = new()
    {
        Id = "friction-turbulent",
        Name = "friction factor of turbulent flow, Colebrook and White",
        Kind = EquationKind.Implicit,
        Template = "1/√{f} = -2·log10({ε}/{D}/3.7 + 2.51/({Re}·√{f}))",
        Symbols = [Friction, Reynolds, Roughness, Bore],
        Range = "Re 4000 to 1e8, ε/D 0 to 0.05; evaluated beyond that, and below within the loss of bends",
        Source = "C. F. Colebrook, Turbulent flow in pipes, J. Inst. Civ. Eng. 11 (1939) 133–156 (from memory)",
    };

    public static readonly Equation TurbulentSlope = new()
    {
        Id = "friction-slope-at-4000",
        Name = "slope of Colebrook's factor by Re, where the transition ends",
        Template = "-{f2}/2000·c/({ε}/{D}/3.7 + 2.51/(4000·√{f2}) + c)",
        With = "c = 2·2.51/(4000·ln 10)",
        Symbols = [Plain("f2'", "df/dRe at Re 4000"), Plain("f2", "Colebrook's factor at Re 4000"), Roughness, Bore],
        Range = "Re 4000",
        Source = "the equation of Colebrook 1939, differentiated",
    };

    public static readonly Equation Transition = new()
    {
        Id = "friction-transition",
        Name = "friction factor between laminar and turbulent flow: a cubic that takes over value and slope at both ends",
        Template = "0.032 + t·(a + t·(3·({f2} - 0.032) - 2·a - b + t·(a + b - 2·({f2} - 0.032))))",
        With = "t = ({Re} - 2000)/2000, a = -0.032, b = 2000·{f2'}",
        Symbols = [Friction, Reynolds, Plain("f2", "Colebrook's factor at Re 4000"), Plain("f2'", "its slope by Re there")],
        Range = "Re 2000 to 4000, where flow is intermittent: ±30 %",
        Source = "a modelling choice of this project",
    };

    public static readonly Equation TubeFriction = new()
    {
        Id = "tube-friction",
        Name = "friction of a length of tube, Darcy and Weisbach",
        Template = "{f}·{L}/{D}·{ρ}·{v}·|{v}|/2",
        Symbols = [Drop, Friction, Of("L", "length with straight friction, arcs of bends left out", Quantities.QuantityKind.Length), Bore, Density, Symbols.Velocity],
        Range = Always,
        Source = "J. Weisbach 1845, H. Darcy 1857 (from memory)",
    };

    public static readonly Equation Rise = new()
    {
        Id = "rise",
        Name = "weight of the column",
        Template = "{ρ}·{g}·{z}",
        Symbols =
        [
            Drop, Density, Of("g", "standard acceleration of free fall", Quantities.QuantityKind.Acceleration),
            Of("z", "height of the end over the start against effective gravity, in lengths of standing still", Quantities.QuantityKind.Length),
        ],
        Range = "a liquid of constant density",
        Source = "hydrostatics; g of the 3rd General Conference on Weights and Measures, 1901",
    };
}
