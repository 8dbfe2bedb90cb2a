namespace FlowCalc.Agents;

/// <summary>State on an expansion path.</summary>
/// <param name="Potential">Ψ = ∫ρ dp / ρ0 from the surroundings, Pa.</param>
/// <param name="Work">∫dp/ρ from the surroundings, J/kg.</param>
/// <param name="Density">ρ, kg/m³.</param>
/// <param name="Quotient">p/ρ, J/kg.</param>
/// <param name="DensitySlope">d ln ρ / d ln p, dimensionless, over 0.</param>
internal readonly record struct TablePoint(double Potential, double Work, double Density, double Quotient, double DensitySlope);
