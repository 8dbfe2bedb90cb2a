using FlowCalc.Quantities;

namespace FlowCalc.Explanations;

/// <summary>Symbols that several equations share.</summary>
internal static class Symbols
{
    public static readonly EquationSymbol
        MassFlow = Of("m", "mass flow", QuantityKind.MassFlow),
        Density = Of("ρ", "density; in the balance of a gas the reference density", QuantityKind.Density),
        Viscosity = Of("μ", "dynamic viscosity", QuantityKind.Viscosity),
        Bore = Of("D", "bore", QuantityKind.Length),
        SmallerBore = Of("D1", "the smaller bore", QuantityKind.Length),
        LargerBore = Of("D2", "the larger bore", QuantityKind.Length),
        Roughness = Of("ε", "height of the wall's roughness", QuantityKind.Length),
        Radius = Of("r", "radius of the bend's centre line", QuantityKind.Length),
        Angle = Of("θ", "angle turned", QuantityKind.Angle),
        Velocity = Of("v", "mean velocity", QuantityKind.Speed),
        Reynolds = Plain("Re", "Reynolds number"),
        Friction = Plain("f", "Darcy friction factor"),
        Coefficient = Plain("K", "loss coefficient"),
        Count = Plain("n", "number of equal ones"),
        Drop = Of("Δp", "drop of total pressure; in the balance of a gas the same at the reference density, a drop of Ψ", QuantityKind.Pressure),
        Flux = new("G", "mass flux, mass flow over area", SymbolUnit.Always("kg/(m2·s)")),
        ReferenceDensity = Of("ρ0", "reference density, that at the highest pressure of the table", QuantityKind.Density),
        EffectiveArea = Of("CA", "discharge coefficient times area", QuantityKind.Area);

    public static EquationSymbol Of(string symbol, string meaning, QuantityKind kind) => new(symbol, meaning, SymbolUnit.Of(kind));

    public static EquationSymbol Plain(string symbol, string meaning) => new(symbol, meaning, SymbolUnit.Plain);

    public static EquationSymbol Absolute(string symbol, string meaning) => new(symbol, meaning, SymbolUnit.AbsolutePressure);

    public static EquationSymbol Si(string symbol, string meaning, string unit) => new(symbol, meaning, SymbolUnit.Always(unit));

    public static EquationSymbol Figure(string symbol, string meaning) => new(symbol, meaning, SymbolUnit.OfFigure);

    /// <summary>The same symbol for another place.</summary>
    public static EquationSymbol As(this EquationSymbol known, string symbol, string meaning) => known with { Symbol = symbol, Meaning = meaning };
}
