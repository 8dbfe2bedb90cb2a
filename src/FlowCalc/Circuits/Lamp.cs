using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>A lamp with whatever resistor is in series with it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end; of a light-emitting diode, that on the way from the positive end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Resistance of lamp and resistor together.</param>
public sealed record Lamp(string Name, int From, int To, ElectricResistance Resistance) : CircuitPart(Name, From, To, Resistance)
{
    /// <summary>Forward voltage of a light-emitting diode, which lets current pass from the first end to the second alone; null of a filament.</summary>
    public ElectricPotential? ForwardVoltage { get; init; }

    /// <summary>How far below its resistance the resistor may be, as a part of it, 0 to 0.5.</summary>
    public required double Tolerance { get; init; }

    /// <summary>Current from which on it is seen to be lit, over 0.</summary>
    public required ElectricCurrent LightsAt { get; init; }

    /// <summary>What it shows at a range of currents.</summary>
    /// <param name="range">Its own currents in one setting.</param>
    public LampLight LightOf(in CurrentRange range) => range.Lowest >= LightsAt.Amperes ? LampLight.Lit : range.Highest >= LightsAt.Amperes ? LampLight.Unsure : LampLight.Dark;
}
