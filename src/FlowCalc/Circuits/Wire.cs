using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A wire, one way.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Its resistance at its own temperature.</param>
public sealed record Wire(string Name, int From, int To, ElectricResistance Resistance) : CircuitPart(Name, From, To, Resistance)
{
    /// <summary>Its size; null where its resistance was given.</summary>
    public WireMake? Make { get; init; }
}
