namespace FlowCalc.Agents;

/// <summary>State of a stream on its way through a tube.</summary>
/// <param name="Density">Of liquid and gas together, kg/m³.</param>
/// <param name="Temperature">Temperature, K.</param>
/// <param name="GasPart">Part of the mass that is gas or vapour, 0 to 1.</param>
/// <param name="Viscosity">Dynamic viscosity, Pa·s; of liquid and gas together 1/μ = x/μ_g + (1 − x)/μ_l (McAdams 1942, from memory).</param>
internal readonly record struct StreamState(double Density, double Temperature, double GasPart, double Viscosity);
