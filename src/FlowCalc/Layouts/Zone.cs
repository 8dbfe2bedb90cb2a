using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A space that the system protects. The flow looks at nothing but its share.</summary>
/// <param name="Id">Its name in the document.</param>
/// <param name="Share">Part of the agent that it should get, 0 to 1; null where not given.</param>
/// <param name="Occupied">True where people are in it.</param>
/// <param name="Note">Free text; null for none.</param>
public sealed record Zone(string Id, double? Share, bool Occupied, string? Note)
{
    /// <summary>Net volume: what the agent can fill; null where not given.</summary>
    public Volume? Volume { get; init; }

    /// <summary>Compressed air that may be let go into it; null for none.</summary>
    public AirBottle? AirBottle { get; init; }

    /// <summary>Coldest temperature of the space; null where not given.</summary>
    public Temperature? Coldest { get; init; }

    /// <summary>Hottest temperature of the space; null where not given.</summary>
    public Temperature? Hottest { get; init; }

    /// <summary>Fresh air that goes through it while the agent should stay; null where not known.</summary>
    public VolumeFlow? Airflow { get; init; }

    /// <summary>Area of openings that do not shut; null where not given.</summary>
    public Area? Openings { get; init; }

    /// <summary>How it is protected; null where the application decides.</summary>
    public Protection? Protection { get; init; }

    /// <summary>What would burn; null where not given.</summary>
    public Hazard? Hazard { get; init; }

    /// <summary>Concentration by volume that puts its fire out, 0 to 1, its safety factor in it; null where the hazard decides.</summary>
    public double? Design { get; init; }

    /// <summary>Time that people need to leave it; null where not given.</summary>
    public Duration? Leaving { get; init; }
}
