namespace FlowCalc.Networks;

/// <summary>
/// A condensed subtree: its run takes the flow <c>m' = G·(Ψ'_above − t·m'_above) − B</c>, with t the run's slope by the flow above it, and then the point that it feeds is at
/// <c>Ψ' = U·m' + V</c>.
/// </summary>
/// <param name="G">Factor of the potential above, kg/(s·Pa).</param>
/// <param name="B">Flow at no potential, kg/s.</param>
/// <param name="U">Factor of the run's own flow, Pa·s/kg.</param>
/// <param name="V">Potential at no flow, Pa; NaN where nothing can flow, since then the subtree says nothing of its potential.</param>
internal readonly record struct RunLine(double G, double B, double U, double V);
