using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A checked firing circuit: nodes, and parts between them.</summary>
public sealed record Circuit
{
    /// <summary>Most parts of a circuit.</summary>
    public const int MostParts = 60;

    /// <summary>Most pushes of a circuit.</summary>
    public const int MostPushes = 8;

    /// <summary>Names of the nodes.</summary>
    public required ImmutableArray<string> Nodes { get; init; }

    /// <summary>Index of the node that is the chassis; null where none is.</summary>
    public int? Chassis { get; init; }

    /// <summary>The source.</summary>
    public required CircuitSource Source { get; init; }

    /// <summary>The parts, at least one of them an <see cref="Actuator"/>.</summary>
    public required ImmutableArray<CircuitPart> Parts { get; init; }

    /// <summary>Resistance that a corroded joint has besides its own.</summary>
    public required ElectricResistance Corrosion { get; init; }

    /// <summary>What the document left open of the circuit, and what was taken.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];

    /// <summary>Name of the part, or of the node, that a fault is at.</summary>
    public string PlaceOf(CircuitFault fault) => fault.Kind == CircuitFaultKind.Chassis ? Nodes[fault.Place] : Parts[fault.Place].Name;

    /// <summary>The parts of a kind with their places among all.</summary>
    /// <typeparam name="TPart">The kind.</typeparam>
    /// <returns>Index and part, in order.</returns>
    public IEnumerable<(int Index, TPart Part)> Of<TPart>()
        where TPart : CircuitPart
    {
        for (var index = 0; index < Parts.Length; index++)
            if (Parts[index] is TPart part) yield return (index, part);
    }
}
