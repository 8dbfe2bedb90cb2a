namespace FlowCalc.Explanations;

/// <summary>A gas or an agent that boils at one pressure of its way through the tubes; and what a nozzle there would pass.</summary>
/// <param name="Pressure">Absolute pressure, Pa.</param>
/// <param name="Density">Of liquid and gas together, kg/m³.</param>
/// <param name="Potential">Ψ = ∫ρ dp/ρ0 from the surroundings, Pa.</param>
/// <param name="Work">W = ∫dp/ρ from the surroundings, J/kg.</param>
/// <param name="Viscosity">Dynamic viscosity, Pa·s.</param>
/// <param name="NozzleFlux">Mass flux out of a nozzle of discharge coefficient 1 at this total pressure, kg/(m²·s).</param>
public readonly record struct PathState(double Pressure, double Density, double Potential, double Work, double Viscosity, double NozzleFlux);
