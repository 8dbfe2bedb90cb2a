using FlowCalc.Quantities;

namespace FlowCalc.Explanations;

/// <summary>What unit a symbol of an equation has.</summary>
/// <param name="Si">The SI unit in which the equation takes it, such as <c>kg/(m2·s)</c>; <c>1</c> for a plain number.</param>
/// <param name="Kind">What it measures, where an answer may be written in other units; null for a plain number and for what is written in SI always.</param>
/// <param name="IsAbsolute">Whether it is an absolute pressure; others are gauge, or differences.</param>
public readonly record struct SymbolUnit(string Si, QuantityKind? Kind, bool IsAbsolute)
{
    /// <summary>A plain number.</summary>
    public static SymbolUnit Plain { get; } = new("1", null, false);

    /// <summary>An absolute pressure.</summary>
    public static SymbolUnit AbsolutePressure { get; } = new("Pa(a)", QuantityKind.Pressure, true);

    /// <summary>The SI unit of whatever a step is about; in the step itself that unit stands.</summary>
    public static SymbolUnit OfFigure { get; } = new("SI", null, false);

    /// <summary>The unit of a kind of quantity; a pressure gauge, or a difference.</summary>
    /// <param name="kind">What is measured.</param>
    public static SymbolUnit Of(QuantityKind kind) => new(WritingUnits.Of(kind, UnitSystem.Si).Symbol, kind, false);

    /// <summary>A unit that is SI in every answer, since no table of units has it.</summary>
    /// <param name="si">The unit.</param>
    public static SymbolUnit Always(string si) => new(si, null, false);

    /// <summary>A value in the units of a system.</summary>
    /// <param name="si">The value in <see cref="Si"/>.</param>
    /// <param name="system">The system.</param>
    public WrittenQuantity Write(double si, UnitSystem system) =>
        Kind is not { } kind ? new(si, Si) : IsAbsolute ? QuantityWriter.WriteAbsolute(si, system) : QuantityWriter.Write(si, kind, system);
}
