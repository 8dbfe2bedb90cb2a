namespace FlowCalc.Networks;

/// <summary>What a run is to the solver, without bends, throats and tees.</summary>
/// <param name="Bore">Inside diameter, m, over 0.</param>
/// <param name="StraightLength">Length with straight-tube friction, m, 0 or more.</param>
/// <param name="RelativeRoughness">Roughness over bore, dimensionless.</param>
/// <param name="Rise">Height of its end over its start, m.</param>
/// <param name="Constant">Sum of K / (2 A²) that does not depend on Reynolds number, 1/m⁴, 0 or more.</param>
/// <param name="Parallel">Equal runs side by side that share the flow, 1 or more.</param>
internal readonly record struct RunGeometry(double Bore, double StraightLength, double RelativeRoughness, double Rise, double Constant, int Parallel = 1);
