using FlowCalc.Bottles;

namespace FlowCalc.Layouts;

/// <summary>A bottle whose outlet joins the tube at the supply point.</summary>
/// <param name="Bottle">The bottle as it was filled.</param>
public sealed record BottleSupply(Bottle Bottle) : Supply;
