using FlowCalc.Agents;

namespace FlowCalc.Bottles;

/// <summary>Pressure in a bottle of liquid at rest.</summary>
public static class BottlePressure
{
    /// <summary>How far the closed form may be trusted, for the answer's list of assumptions.</summary>
    public const string Statement =
        "the cushion as an ideal gas beside the liquid's expansion, no gas dissolved, the shell rigid: within about 2 % up to 50 bar and ±40 °C of the charge temperature";

    /// <summary>Absolute pressure of the cushion, Pa, at a temperature.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="agent">Its liquid, which must cover both temperatures.</param>
    /// <param name="temperature">Temperature of bottle and contents, K.</param>
    /// <param name="pressure">Absolute pressure, Pa; NaN where there is none.</param>
    /// <returns>False where the liquid alone fills the bottle at one of the temperatures: no gas is left and the shell is what yields.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside the agent's data.</exception>
    /// <remarks>
    /// Ideal gas, p_gas/T·V_gas constant, with the vapour of the liquid added (Dalton). Against real nitrogen at 60 bar and 300 K the
    /// compressibility factor moves by about 2 % for 40 K (NIST reference equation of Span et al. 2000, from memory).
    /// </remarks>
    public static bool TryAt(Bottle bottle, LiquidAgent agent, double temperature, out double pressure)
    {
        var charge = bottle.ChargeTemperature.Kelvins;
        var gasAtCharge = bottle.Volume.CubicMeters - bottle.Fill.Kilograms / agent.Density(charge);
        var gas = bottle.Volume.CubicMeters - bottle.Fill.Kilograms / agent.Density(temperature);
        pressure = double.NaN;
        if (!(gasAtCharge > 0 && gas > 0)) return false;
        var dry = bottle.ChargePressure.Pascals - agent.VapourPressure(charge);
        pressure = dry * (temperature / charge) * (gasAtCharge / gas) + agent.VapourPressure(temperature);
        return true;
    }

    /// <summary>Part of the bottle that the liquid takes, 0 to 1 and over where it does not fit.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="agent">Its liquid.</param>
    /// <param name="temperature">Temperature, K, covered by the agent's data.</param>
    public static double LiquidPart(Bottle bottle, LiquidAgent agent, double temperature) =>
        bottle.Fill.Kilograms / agent.Density(temperature) / bottle.Volume.CubicMeters;
}
