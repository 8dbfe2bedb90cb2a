namespace FlowCalc.Agents;

/// <summary>Liquid and vapour in equilibrium.</summary>
/// <param name="Temperature">Temperature, K.</param>
/// <param name="Pressure">Absolute pressure, Pa.</param>
/// <param name="LiquidDensity">Density of the liquid, kg/m³.</param>
/// <param name="VapourDensity">Density of the vapour, kg/m³.</param>
/// <param name="LiquidEnthalpy">Enthalpy of the liquid, J/kg, from the equation's own zero.</param>
/// <param name="VapourEnthalpy">Enthalpy of the vapour, J/kg.</param>
/// <param name="LiquidEntropy">Entropy of the liquid, J/(kg·K), from the equation's own zero.</param>
/// <param name="VapourEntropy">Entropy of the vapour, J/(kg·K).</param>
internal readonly record struct SaturatedPoint(
    double Temperature, double Pressure, double LiquidDensity, double VapourDensity,
    double LiquidEnthalpy, double VapourEnthalpy, double LiquidEntropy, double VapourEntropy)
{
    /// <summary>Latent heat, J/kg.</summary>
    public double Latent => VapourEnthalpy - LiquidEnthalpy;
}
