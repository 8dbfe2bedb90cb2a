using UnitsNet;

namespace FlowCalc.Circuits;

/// <summary>What lets the agent go when enough current passes: a bridgewire or a coil.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end.</param>
/// <param name="To">Index of the node of its second end.</param>
/// <param name="Resistance">Its resistance.</param>
public sealed record Actuator(string Name, int From, int To, ElectricResistance Resistance) : CircuitPart(Name, From, To, Resistance)
{
    /// <summary>Whether it is fired once and for all, by a bridgewire that may open; else it is a coil.</summary>
    public required bool IsPyrotechnic { get; init; }

    /// <summary>Current that is sure to fire it, over 0; of a coil that states none, what passes at 85 % of its rated voltage.</summary>
    public required ElectricCurrent AllFire { get; init; }

    /// <summary>Current that is sure not to fire it, under <see cref="AllFire"/>; null where it is not known.</summary>
    public ElectricCurrent? NoFire { get; init; }

    /// <summary>How long the all-fire current has to last; null where it is not known.</summary>
    public Duration? Pulse { get; init; }

    /// <summary>Energy that is sure to fire it; null where it is not known.</summary>
    public Energy? AllFireEnergy { get; init; }

    /// <summary>Rated voltage of a coil; null where it is not known, and of a bridgewire.</summary>
    public ElectricPotential? RatedVoltage { get; init; }

    /// <summary>From here on it may fire: the no-fire current, or the all-fire current where that is not known.</summary>
    public ElectricCurrent MayFire => NoFire ?? AllFire;

    /// <summary>What a range of currents does to it.</summary>
    /// <param name="range">Its own currents in one setting.</param>
    public ActuatorEffect EffectOf(in CurrentRange range) =>
        range.Lowest >= AllFire.Amperes ? ActuatorEffect.Fires : range.Highest >= MayFire.Amperes ? ActuatorEffect.MayFire : ActuatorEffect.Rests;
}
