namespace FlowCalc.Quantities;

/// <summary>The set of units that an answer is written in.</summary>
public enum UnitSystem
{
    /// <summary>The everyday metric units of the trade: bar, L/min, kg/s, L, °C.</summary>
    Metric,

    /// <summary>The customary units of the United States: psi, US gal/min, lb/s, ft, °F.</summary>
    Us,

    /// <summary>The coherent units of the International System: Pa, m3/s, kg/s, m3, K, rad.</summary>
    Si,
}
