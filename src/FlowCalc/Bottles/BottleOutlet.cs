using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>What the agent passes between the inside of the bottle and the first tube.</summary>
/// <param name="DipTube">The dip tube; null for none.</param>
/// <param name="ValveKv">Flow coefficient of the open valve, m³/(s·√Pa) at 1000 kg/m³; null where not given.</param>
/// <param name="Regulator">A regulator; null for none.</param>
/// <param name="Restrictor">An orifice plate; null for none.</param>
/// <param name="BurstPressure">Absolute pressure at which a disc opens; null for none.</param>
public sealed record BottleOutlet(DipTube? DipTube, double? ValveKv, Regulator? Regulator, Restrictor? Restrictor, Pressure? BurstPressure);
