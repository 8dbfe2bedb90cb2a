using FlowCalc.Quantities;

namespace FlowCalc.Studies.Tolerance;

/// <summary>What the figures of a study measure.</summary>
public static class FigureUnits
{
    /// <summary>What a figure measures; null for a part or a deviation.</summary>
    /// <param name="figure">The figure.</param>
    public static QuantityKind? KindOf(Figure figure) => figure switch
    {
        Figure.MassFlow or Figure.PeakMassFlow => QuantityKind.MassFlow,
        Figure.Pressure => QuantityKind.Pressure,
        Figure.Mass or Figure.LeftBehind => QuantityKind.Mass,
        Figure.Arrival or Figure.LastArrival or Figure.Time95 or Figure.RequiredTime or Figure.LiquidEnd or Figure.End => QuantityKind.Time,
        _ => null,
    };
}
