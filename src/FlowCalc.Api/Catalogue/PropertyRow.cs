using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>Properties of a liquid at one temperature and 1.01325 bara.</summary>
/// <param name="Temperature">Temperature.</param>
/// <param name="Density">Density.</param>
/// <param name="Viscosity">Dynamic viscosity.</param>
public readonly record struct PropertyRow(Quantity Temperature, Quantity Density, Quantity Viscosity);
