namespace FlowCalc.Networks;

/// <summary>
/// A condensed subtree: the flow that its run takes is <c>m' = G·Ψ'_above − B − C·m'_above</c>; and the run's own balance is
/// <c>Ψ' = Ψ'_above − a·m' − t·m'_above + E</c>.
/// </summary>
/// <param name="G">Factor of the potential above, kg/(s·Pa).</param>
/// <param name="B">Flow at no potential, kg/s.</param>
/// <param name="C">Factor of the flow into the point above, dimensionless.</param>
/// <param name="E">Rest of the run's linearised balance, Pa.</param>
internal readonly record struct RunLine(double G, double B, double C, double E);
