namespace FlowCalc.Quantities;

/// <summary>A quantity that was read and converted.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="Si">Its value in the SI base unit of its kind (m, m², m³, Pa, kg, kg/m³, m³/s, kg/s, m³/(s·√Pa) at 1000 kg/m³, Pa·s, K, s, rad, N, A, V, Ω, m/s, m/s², F, J); always finite, never −0.</param>
/// <param name="IsGauge">True for a gauge pressure: <paramref name="Si"/> is then Pa above the ambient pressure. False for an absolute pressure and for every other kind.</param>
/// <param name="Unit">The unit's spelling as it was read, one of the table's.</param>
public readonly record struct Reading(QuantityKind Kind, double Si, bool IsGauge, string Unit);
