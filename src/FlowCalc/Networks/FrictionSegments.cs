namespace FlowCalc.Networks;

/// <summary>Lengths with wall friction. Arrays are padded with segments that cost nothing, to whole vectors.</summary>
/// <param name="Count">Segments without the padding.</param>
/// <param name="Run">Run that segment i is part of; null where segment i is the straight tube of run i.</param>
/// <param name="ReynoldsPerFlow">Reynolds number times viscosity over mass flow, 4 / (π D), 1/m.</param>
/// <param name="Weight">L / (2 D³), 1/m²: the pressure drop is Weight·(μ²/ρ)·f·Re².</param>
/// <param name="Roughness">Relative roughness over 3.7, as Colebrook takes it, dimensionless.</param>
internal sealed record FrictionSegments(int Count, int[]? Run, double[] ReynoldsPerFlow, double[] Weight, double[] Roughness);
