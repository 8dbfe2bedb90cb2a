using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>The bottle at rest, and how it changes while it gives.</summary>
internal static class BottleEquations
{
    static readonly EquationSymbol
        BottleVolume = Of("V", "volume of the bottle", QuantityKind.Volume),
        Fill = Of("M", "mass of agent", QuantityKind.Mass),
        GasDensity = Of("ρg", "density of the gas", QuantityKind.Density),
        GasVolume = Of("Vg", "volume of the cushion", QuantityKind.Volume),
        Temperature = Of("T", "temperature", QuantityKind.Temperature),
        GasConstant = Si("R", "specific gas constant", "J/(kg·K)"),
        VolumeRate = Of("dV", "volume that the cushion gains in a second", QuantityKind.VolumeFlow),
        DensityRate = Si("dρ", "change of the cushion's density in a second", "kg/(m3·s)");

    public static readonly Equation CushionVolume = new()
    {
        Id = "cushion-volume",
        Name = "volume of the cushion over a liquid",
        Template = "{V} - {M}/{ρ}",
        Symbols = [GasVolume, BottleVolume, Fill, Of("ρ", "density of the liquid", QuantityKind.Density)],
        Range = "no gas dissolved, the shell rigid",
        Source = "geometry",
    };

    public static readonly Equation CushionDensity = new()
    {
        Id = "cushion-density",
        Name = "density of the cushion's gas after warming or cooling",
        Template = "{ρc}·{Vc}/{Vg}",
        Symbols = [GasDensity, Of("ρc", "its density when charged", QuantityKind.Density), Of("Vc", "its volume when charged", QuantityKind.Volume), GasVolume],
        Range = "no gas dissolved, none lost",
        Source = "conservation of mass",
    };

    public static readonly Equation GasPressure = new()
    {
        Id = "gas-pressure",
        Name = "pressure of a real gas",
        Template = "{Z}·{ρg}·{R}·{T}",
        Symbols = [Absolute("pg", "pressure of the gas alone"), Plain("Z", "compressibility factor by the gas's equation of state, from the engine"), GasDensity, GasConstant, Temperature],
        Range = "data of the gas",
        Source = "nitrogen (and air as nitrogen) R. Span et al. 2000, argon Ch. Tegeler et al. 1999, others by /v1/agents: coefficients as collected in CoolProp; definition of Z",
    };

    public static readonly Equation AgentPressure = new()
    {
        Id = "agent-pressure-under-nitrogen",
        Name = "partial pressure of an agent over its liquid with dissolved nitrogen: Raoult with Poynting's factor",
        Template = "(1 - {y})·{ps}·exp({M}/{ρl}·({p} - {ps})/(8.314462618·{T}))",
        Symbols =
        [
            Absolute("pv", "partial pressure of the agent"), Plain("y", "mole fraction of nitrogen in the liquid, by Henry's law, from the engine"), Absolute("ps", "vapour pressure of the agent alone"),
            Si("M", "molar mass of the agent", "kg/mol"), Of("ρl", "density of the agent's liquid", QuantityKind.Density), Absolute("p", "pressure in the bottle"), Temperature,
        ],
        Range = "pressures of HFC-227ea to about 5 % from 0 to 50 °C, others twice that",
        Source = "F.-M. Raoult 1887, J. H. Poynting 1881; the model of the engine for nitrogen over an agent, held against ISO 14520-9 (from memory)",
    };

    public static readonly Equation BottlePressure = new()
    {
        Id = "bottle-pressure",
        Name = "pressure in a bottle, of its gas and of what evaporates into it",
        Template = "{pg} + {pv}",
        Symbols = [Absolute("p", "pressure in the bottle"), Absolute("pg", "pressure of the gas alone"), Absolute("pv", "vapour pressure of the liquid, partial pressure of the agent")],
        Range = "gas and vapour side by side",
        Source = "J. Dalton 1802",
    };

    public static readonly Equation LiquidPart = new()
    {
        Id = "liquid-part",
        Name = "part of the bottle that liquid fills, of an agent with gas above it",
        Template = "(({M} - {Mg})/{ρl} + {Nl}·{b})/{V}",
        Symbols =
        [
            Plain("x", "part of the volume"), Fill, Of("Mg", "agent in the gas", QuantityKind.Mass), Of("ρl", "density of the agent's liquid", QuantityKind.Density),
            Of("Nl", "nitrogen dissolved in it", QuantityKind.Mass), Si("b", "volume that dissolved nitrogen adds to the liquid", "m3/kg"), BottleVolume,
        ],
        Range = "equilibrium",
        Source = "conservation of mass",
    };

    public static readonly Equation RestDensity = new()
    {
        Id = "rest-density",
        Name = "density of what fills a bottle in one phase",
        Template = "{M}/{V}",
        Symbols = [GasDensity, Fill, BottleVolume],
        Range = "one phase",
        Source = "conservation of mass",
    };

    public static readonly Equation GasOverLiquid = new()
    {
        Id = "density-of-gas-over-liquid",
        Name = "density of the gas over a liquefied agent, nitrogen with it",
        Template = "({Mg} + {N})/((1 - {x})·{V})",
        Symbols = [GasDensity, Of("Mg", "agent in the gas", QuantityKind.Mass), Of("N", "nitrogen in the gas", QuantityKind.Mass), Plain("x", "part of the volume that is liquid"), BottleVolume],
        Range = "equilibrium",
        Source = "conservation of mass",
    };

    public static readonly Equation Head = new()
    {
        Id = "head-in-bottle",
        Name = "what the liquid over the inlet of the dip tube adds",
        Template = "{ρ}·{g}·{a}·({zs} - {zi})",
        Symbols =
        [
            Of("Δph", "pressure at the inlet over that of the cushion", QuantityKind.Pressure), Density, Of("g", "standard acceleration of free fall", QuantityKind.Acceleration),
            Plain("a", "effective gravity in g"), Of("zs", "height of the liquid's surface", QuantityKind.Length), Of("zi", "height of the inlet", QuantityKind.Length),
        ],
        Range = "heights in the attitude, from the middle of the bottle's base",
        Source = "hydrostatics; the surface is a plane across a flat-ended cylinder",
    };

    public static readonly Equation VolumeAtUncovering = new()
    {
        Id = "cushion-at-uncovering",
        Name = "volume of the cushion when the dip tube uncovers",
        Template = "{V} - {Vl} - {Vd}",
        Symbols =
        [
            Of("Vu", "volume of the cushion then", QuantityKind.Volume), BottleVolume, Of("Vl", "liquid below the inlet of the dip tube, by geometry of the attitude", QuantityKind.Volume),
            Of("Vd", "liquid in the dip tube itself, which is still full", QuantityKind.Volume),
        ],
        Range = "liquid at rest in the attitude",
        Source = "geometry of a flat-ended cylinder",
    };

    public static readonly Equation Polytropic = new()
    {
        Id = "cushion-law",
        Name = "pressure of the cushion when the dip tube uncovers, by the exponent that the discharge followed",
        Template = "{p}·({Vg}/{Vu})^{n}",
        Symbols = [Absolute("pu", "pressure then"), Absolute("p", "pressure at the start"), GasVolume, Of("Vu", "volume of the cushion then", QuantityKind.Volume), Plain("n", "exponent, cushionExponent of the answer: 1 isothermal, about 1.4 without heat")],
        Range = "between the start and the end of the liquid; the exponent comes out of the heat balance, it is not put in",
        Source = "definition of the exponent",
    };

    public static readonly Equation GasRate = new()
    {
        Id = "cushion-volume-rate",
        Name = "how fast the cushion grows while liquid leaves: the mass balance that time integrates",
        Template = "{m}/({ρ}·{n})",
        Symbols = [VolumeRate, MassFlow, Density, Plain("n", "bottles let go together")],
        Range = "while the dip tube draws liquid",
        Source = "conservation of mass",
    };

    public static readonly Equation GasDensityRate = new()
    {
        Id = "cushion-density-rate",
        Name = "how fast the cushion's density falls",
        Template = "-{ρg}·{dV}/{Vg}",
        Symbols = [DensityRate, GasDensity, VolumeRate, GasVolume],
        Range = "while the dip tube draws liquid; the little vapour in the cushion counts as gas, so that its density is a little over that of the gas alone",
        Source = "conservation of mass",
    };

    public static readonly Equation GasTemperatureRate = new()
    {
        Id = "cushion-temperature-rate",
        Name = "how fast the cushion cools before any heat has come to it: the energy balance that time integrates",
        Template = "{T}·{β}/({ρg}²·{cv})·{dρ}",
        Symbols = [Si("dT", "change of the gas temperature in a second", "K/s"), Temperature, Si("β", "∂p/∂T at constant density", "Pa/K"), GasDensity, Si("cv", "heat capacity at constant volume", "J/(kg·K)"), DensityRate],
        Range = "at the start, when wall and gas have one temperature; heat, h·A·(wall - gas)/(m·cv), is added as they part",
        Source = "first law for a uniform gas; heat by W. H. McAdams 1954, Nu = 0.13 Ra^(1/3) (from memory)",
    };

    public static readonly Equation Contents = new()
    {
        Id = "contents-rate",
        Name = "part of the contents that leaves in a second: the mass balance that time integrates",
        Template = "{m}/({n}·{M})",
        Symbols = [Si("dM", "part of the contents a second", "1/s"), MassFlow, Plain("n", "bottles let go together"), Fill],
        Range = "the filled line at the pressure of the start, where the flow is the greatest",
        Source = "conservation of mass",
    };
}
