using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Explanations;

/// <summary>A gas or an agent that boils at one pressure of its way through the tubes; and what a nozzle there would pass.</summary>
/// <param name="Pressure">Absolute pressure.</param>
/// <param name="Density">Of liquid and gas together.</param>
/// <param name="Potential">Ψ = ∫ρ dp/ρ0 from the surroundings' pressure.</param>
/// <param name="Work">W = ∫dp/ρ from the surroundings' pressure.</param>
/// <param name="Viscosity">Dynamic viscosity.</param>
/// <param name="NozzleFlux">Mass flux out of a nozzle of discharge coefficient 1 at this total pressure.</param>
public readonly record struct PathStateAnswer(Quantity Pressure, Quantity Density, Quantity Potential, Quantity Work, Quantity Viscosity, Quantity NozzleFlux);
