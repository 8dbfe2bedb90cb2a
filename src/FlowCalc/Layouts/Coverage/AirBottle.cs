using UnitsNet;

namespace FlowCalc.Layouts.Coverage;

/// <summary>A bottle of compressed air in a zone, which may let its air go there in a fire.</summary>
/// <param name="Volume">Its volume.</param>
/// <param name="Pressure">Its absolute pressure.</param>
public sealed record AirBottle(Volume Volume, Pressure Pressure);
