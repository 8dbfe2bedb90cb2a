namespace FlowCalc.Networks;

/// <summary>A straight line between flow and pressure, <c>T·m = G·p − R</c>; neither factor is divided by, so either may vanish.</summary>
/// <param name="G">Factor of the pressure, kg/(s·Pa) or 1.</param>
/// <param name="T">Factor of the flow, 1 or Pa·s/kg.</param>
/// <param name="R">The rest, kg/s or Pa.</param>
internal readonly record struct NozzleTangent(double G, double T, double R);
