using MathNet.Numerics.RootFinding;

namespace FlowCalc.Agents;

/// <summary>Density of a gas at a temperature and pressure.</summary>
public static class GasDensity
{
    /// <summary>The density.</summary>
    /// <param name="gas">The gas.</param>
    /// <param name="temperature">Temperature, K, over the gas's critical temperature: below it two phases may share a pressure.</param>
    /// <param name="pressure">Absolute pressure, Pa, over 0.</param>
    /// <returns>Density, kg/m³; NaN where the gas has no state there within its data.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Pressure or temperature is not over 0.</exception>
    public static double Of(IGas gas, double temperature, double pressure)
    {
        ArgumentNullException.ThrowIfNull(gas);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(temperature);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pressure);
        var ideal = pressure / (gas.GasConstant * temperature);
        double low = 0, high = ideal;
        // Z of a gas above its critical temperature stays over 0.2.
        while (gas.At(temperature, high) is var point && point.Pressure < pressure && high < 5 * ideal) (low, high) = (high, high * 1.1);
        if (double.IsNaN(gas.At(temperature, high).Pressure) && gas is RealGas { HighestDensity: var most } && most > low) high = most;
        return gas.At(temperature, high).Pressure >= pressure
            ? Brent.FindRoot(density => gas.At(temperature, density).Pressure - pressure, low, high, 1e-13 * high, 200)
            : double.NaN;
    }
}
