namespace FlowCalc.Agents;

/// <summary>Liquid and vapour of a liquefied gas in equilibrium, as a caller of the library may see them.</summary>
/// <param name="Temperature">Temperature, K.</param>
/// <param name="Pressure">Absolute vapour pressure, Pa.</param>
/// <param name="LiquidDensity">Density of the liquid, kg/m³.</param>
/// <param name="VapourDensity">Density of the vapour, kg/m³.</param>
/// <param name="LiquidViscosity">Dynamic viscosity of the liquid, Pa·s.</param>
public readonly record struct SaturationPoint(double Temperature, double Pressure, double LiquidDensity, double VapourDensity, double LiquidViscosity);
