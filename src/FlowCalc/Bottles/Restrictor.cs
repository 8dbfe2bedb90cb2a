using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>An orifice plate in a bottle's outlet.</summary>
/// <param name="Diameter">Diameter of the hole, over 0.</param>
/// <param name="DischargeCoefficient">Discharge coefficient, over 0 to 1, dimensionless.</param>
public sealed record Restrictor(Length Diameter, double DischargeCoefficient);
