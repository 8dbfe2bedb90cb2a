using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>The holes of a nozzle.</summary>
/// <param name="Diameter">Diameter of one hole, over 0.</param>
/// <param name="DischargeCoefficient">Discharge coefficient, over 0 to 1, dimensionless.</param>
/// <param name="Count">Equal holes, 1 or more.</param>
public sealed record NozzleOrifice(Length Diameter, double DischargeCoefficient, int Count);
