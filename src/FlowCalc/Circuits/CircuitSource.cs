using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>The source of the circuit: a voltage behind a resistance.</summary>
public sealed record CircuitSource
{
    /// <summary>What it is.</summary>
    public required SourceKind Kind { get; init; }

    /// <summary>Index of the node of its negative end.</summary>
    public required int Minus { get; init; }

    /// <summary>Index of the node of its positive end; another than <see cref="Minus"/>.</summary>
    public required int Plus { get; init; }

    /// <summary>Voltage without load at its worst for firing: cold and near the end of its life. Over 0.</summary>
    public required ElectricPotential LowestVoltage { get; init; }

    /// <summary>Voltage without load when it is fresh, not under <see cref="LowestVoltage"/>: what the test current is worked out with.</summary>
    public required ElectricPotential HighestVoltage { get; init; }

    /// <summary>Inner resistance when it is fresh and warm, over 0.</summary>
    public required ElectricResistance FreshResistance { get; init; }

    /// <summary>Inner resistance in the cold, not under <see cref="FreshResistance"/>.</summary>
    public required ElectricResistance ColdResistance { get; init; }

    /// <summary>Capacitance of a capacitor; null of every other kind.</summary>
    public ElectricCapacitance? Capacitance { get; init; }

    /// <summary>Whether it serves this system alone; null where the document does not say.</summary>
    public bool? IsOwn { get; init; }
}
