using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>A plate that spreads the pull of a bolt over a sheet.</summary>
/// <param name="Width">Its least width, over the bolt's hole.</param>
/// <param name="Thickness">Its thickness, over 0.</param>
public sealed record Spreader(Length Width, Length Thickness);
