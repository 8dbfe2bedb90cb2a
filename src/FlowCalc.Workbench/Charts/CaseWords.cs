using FlowCalc.Discharge;
using FlowCalc.Workbench.Figures;

namespace FlowCalc.Workbench.Charts;

/// <summary>A case of a discharge in words.</summary>
public static class CaseWords
{
    /// <summary>Such as <c>20 °C, upright</c>.</summary>
    /// <param name="one">The case.</param>
    /// <param name="shown">How numbers are shown.</param>
    public static string Of(DischargeCase one, Shown shown)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(shown);
        return $"{shown.Of(one.Temperature)}, {one.Attitude.Name}";
    }
}
