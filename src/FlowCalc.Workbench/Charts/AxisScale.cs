using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;

namespace FlowCalc.Workbench.Charts;

/// <summary>Values in SI as an axis shows them.</summary>
/// <param name="Factor">Units of the axis per SI unit.</param>
/// <param name="Offset">What the axis shows at 0 SI.</param>
/// <param name="Unit">The unit.</param>
readonly record struct AxisScale(double Factor, double Offset, string Unit)
{
    /// <summary>The scale of a kind of value.</summary>
    public static AxisScale Of(QuantityKind kind, Shown shown)
    {
        var (factor, offset, unit) = QuantityWriter.Scale(kind, shown.System);
        return new(factor, offset, unit);
    }

    /// <summary>A value on the axis.</summary>
    public double At(double si) => si * Factor + Offset;
}
