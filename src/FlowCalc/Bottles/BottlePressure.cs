using FlowCalc.Agents;

namespace FlowCalc.Bottles;

/// <summary>Pressure in a bottle of liquid at rest.</summary>
public static class BottlePressure
{
    /// <summary>How far the pressure may be trusted, for the answer's list of assumptions.</summary>
    /// <remarks>Ostwald coefficients at 20 °C in water: nitrogen 0.0166, argon 0.036 (from memory); of an unsaturated liquid that part of its volume is the room that gas goes into.</remarks>
    public const string Statement =
        "the cushion as a real gas beside the liquid's expansion, its vapour added; no gas dissolved, the shell rigid: within about 2 % where liquid fills half the bottle and 5 % where it fills three quarters, as water takes up 1.7 % of its own volume of nitrogen (3.6 % of argon)";

    /// <summary>Absolute pressure in the bottle, Pa, at a temperature.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="agent">Its liquid, which must cover both temperatures.</param>
    /// <param name="temperature">Temperature of bottle and contents, K.</param>
    /// <param name="pressure">Absolute pressure, Pa; NaN where there is none.</param>
    /// <returns>False where the liquid alone fills the bottle at one of the temperatures, so that no gas is left and the shell is what yields, or the gas leaves the range of its data.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is outside the agent's data.</exception>
    /// <remarks>The cushion's mass is what its density and volume say when it is charged; the vapour of the liquid is added (Dalton).</remarks>
    public static bool TryAt(Bottle bottle, LiquidAgent agent, double temperature, out double pressure)
    {
        var charge = bottle.ChargeTemperature.Kelvins;
        var gasAtCharge = bottle.Volume.CubicMeters - bottle.Fill.Kilograms / agent.Density(charge);
        var volume = bottle.Volume.CubicMeters - bottle.Fill.Kilograms / agent.Density(temperature);
        var dry = bottle.ChargePressure.Pascals - agent.VapourPressure(charge);
        pressure = double.NaN;
        if (!(gasAtCharge > 0 && volume > 0 && dry > 0)) return false;
        var gas = CushionGases.Of(bottle.CushionGas).Gas;
        var density = GasDensity.Of(gas, charge, dry) * (gasAtCharge / volume);
        pressure = gas.At(temperature, density).Pressure + agent.VapourPressure(temperature);
        return double.IsFinite(pressure);
    }

    /// <summary>Part of the bottle that the liquid takes, 0 to 1 and over where it does not fit.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="agent">Its liquid.</param>
    /// <param name="temperature">Temperature, K, covered by the agent's data.</param>
    public static double LiquidPart(Bottle bottle, LiquidAgent agent, double temperature) =>
        bottle.Fill.Kilograms / agent.Density(temperature) / bottle.Volume.CubicMeters;
}
