namespace FlowCalc.Discharge;

/// <summary>Gas that leaves a nozzle: an isentropic nozzle from the state before it, choked or not.</summary>
/// <remarks>
/// The ideal-gas law of the nozzle (Saint-Venant, Wantzel 1839) with the real density before it. At the pressures of a cushion whose
/// liquid has gone the difference to a real gas is below 1 %.
/// </remarks>
internal static class GasNozzle
{
    /// <summary>Mass flux, kg/(s·m²).</summary>
    /// <param name="pressure">Absolute pressure before the nozzle, Pa, over 0.</param>
    /// <param name="density">Density before the nozzle, kg/m³, over 0.</param>
    /// <param name="heatCapacityRatio">cp/cv, over 1.</param>
    /// <param name="outside">Absolute pressure behind the nozzle, Pa.</param>
    /// <returns>0 where the pressure before it is not the higher one.</returns>
    public static double Flux(double pressure, double density, double heatCapacityRatio, double outside)
    {
        if (!(pressure > outside)) return 0;
        var gamma = heatCapacityRatio;
        var choked = Math.Pow(2 / (gamma + 1), gamma / (gamma - 1));
        var ratio = Math.Max(outside / pressure, choked);
        var head = gamma / (gamma - 1) * (1 - Math.Pow(ratio, (gamma - 1) / gamma));
        return Math.Pow(ratio, 1 / gamma) * Math.Sqrt(2 * pressure * density * head);
    }
}
