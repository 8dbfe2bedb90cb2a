using UnitsNet;

namespace FlowCalc.Upkeep;

/// <summary>What a reading of the gauge says of the pressure.</summary>
/// <param name="Reading">Absolute pressure that was read.</param>
/// <param name="Expected">What a sound bottle shows at that temperature.</param>
/// <param name="Lost">How far the reading is below that, gauge pressures, as a part of it; under 0 where it is above; null where nothing is expected.</param>
public sealed record GaugeCheck(Pressure Reading, RestPressure Expected, double? Lost)
{
    /// <summary>How far a reading is below what is expected at its temperature.</summary>
    /// <param name="reading">Gauge pressure that was read, Pa.</param>
    /// <param name="expected">Gauge pressure that is expected, Pa, over 0.</param>
    /// <returns>1 − reading/expected.</returns>
    public static double Loss(double reading, double expected) => 1 - reading / expected;
}
