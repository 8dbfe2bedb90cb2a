using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Studies.Tolerance;

/// <summary>One thing of a layout that may be spread.</summary>
/// <param name="Path">Its path by ids and names, such as <c>tubes/trunk/bore</c>.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Items">The runs or points that it is of, as indices of the layout; empty for the supply's.</param>
/// <param name="Design">Its value in the design, SI; of a pressure absolute.</param>
public sealed record SpreadThing(string Path, SpreadKind Kind, ImmutableArray<int> Items, double Design)
{
    /// <summary>Pressure that a part does not count, Pa: that of the surroundings where the value is absolute and parts are of the gauge pressure; else 0.</summary>
    public double Base { get; init; }

    /// <summary>Says why a value, SI, is not possible; null where it is.</summary>
    internal Func<double, string?> Flaw { get; init; } = static _ => null;

    /// <summary>What it measures.</summary>
    public QuantityKind Quantity => Kind switch
    {
        SpreadKind.KFactor => QuantityKind.KFactor,
        SpreadKind.ChargePressure => QuantityKind.Pressure,
        SpreadKind.Fill => QuantityKind.Mass,
        SpreadKind.Temperature => QuantityKind.Temperature,
        _ => QuantityKind.Length,
    };
}
