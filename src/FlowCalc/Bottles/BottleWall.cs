using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>The shell of a bottle, for the heat that it gives to its contents.</summary>
/// <param name="Material">Free text, such as <c>aluminium</c> or <c>steel</c>.</param>
/// <param name="Thickness">Thickness of the shell, over 0.</param>
public sealed record BottleWall(string Material, Length Thickness);
