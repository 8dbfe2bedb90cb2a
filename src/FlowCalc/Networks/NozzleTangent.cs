namespace FlowCalc.Networks;

/// <summary>A straight line between flow and potential, <c>T·m = G·Ψ − R</c>.</summary>
/// <param name="G">Factor of the potential.</param>
/// <param name="T">Factor of the flow, over 0.</param>
/// <param name="R">The rest.</param>
internal readonly record struct NozzleTangent(double G, double T, double R);
