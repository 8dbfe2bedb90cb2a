namespace FlowCalc.Networks;

/// <summary>All formed bends, equal ones of a run taken together. Arrays are padded with bends that cost nothing, to whole vectors.</summary>
/// <param name="Count">Bends without the padding.</param>
/// <param name="Run">Run of bend i, in rising order.</param>
/// <param name="ReynoldsPerFlow">Reynolds number times viscosity over mass flow, 4 / (π D), 1/m.</param>
/// <param name="Weight">Number of equal bends over 2 D², 1/m²: the pressure drop is Weight·(μ²/ρ)·K·Re².</param>
/// <param name="Roughness">Relative roughness over 3.7, dimensionless.</param>
/// <param name="PerFriction">Part of K that multiplies the turbulent friction factor, dimensionless.</param>
/// <param name="Constant">Part of K that does not, dimensionless.</param>
/// <param name="ArcOverBore">Length of the arc over the bore, dimensionless.</param>
/// <param name="DeanPerReynolds">√(D / 2r), dimensionless.</param>
internal sealed record BendSet(
    int Count,
    int[] Run,
    double[] ReynoldsPerFlow,
    double[] Weight,
    double[] Roughness,
    double[] PerFriction,
    double[] Constant,
    double[] ArcOverBore,
    double[] DeanPerReynolds);
