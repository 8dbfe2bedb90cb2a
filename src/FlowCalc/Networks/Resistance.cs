using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>A loss as the network keeps it, whatever the fluid: pressure drop times density over mass flow squared, 1/m⁴.</summary>
internal static class Resistance
{
    /// <summary>Of a loss coefficient of 1 on the velocity head in a bore: 1 / (2 A²).</summary>
    /// <param name="bore">The bore, m, over 0.</param>
    public static double PerCoefficient(double bore) => OfArea(Math.PI / 4 * bore * bore);

    /// <summary>Of an orifice: 1 / (2 (C_d·A)²).</summary>
    /// <param name="effectiveArea">Area times discharge coefficient, m², over 0.</param>
    public static double OfArea(double effectiveArea) => 1 / (2 * effectiveArea * effectiveArea);

    /// <summary>Of a valve or anything else that is known by its Kv.</summary>
    /// <param name="flowCoefficient">Kv, m³/(s·√Pa) at the reference density, over 0.</param>
    public static double OfFlowCoefficient(double flowCoefficient) => 1 / (FlowCoefficientLoss.ReferenceDensity * flowCoefficient * flowCoefficient);
}
