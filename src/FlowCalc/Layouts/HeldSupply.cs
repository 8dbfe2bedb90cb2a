using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A supply point held at a pressure whatever it delivers.</summary>
/// <param name="Pressure">Absolute total pressure at the supply point.</param>
public sealed record HeldSupply(Pressure Pressure) : Supply;
