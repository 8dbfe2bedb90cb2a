using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>Liquid and vapour of a liquefied gas in equilibrium at one temperature.</summary>
/// <param name="Temperature">Temperature.</param>
/// <param name="VapourPressure">Vapour pressure, absolute: the unit says so.</param>
/// <param name="LiquidDensity">Density of the liquid.</param>
/// <param name="VapourDensity">Density of the vapour.</param>
/// <param name="LiquidViscosity">Dynamic viscosity of the liquid.</param>
public readonly record struct SaturationRow(Quantity Temperature, Quantity VapourPressure, Quantity LiquidDensity, Quantity VapourDensity, Quantity LiquidViscosity);
