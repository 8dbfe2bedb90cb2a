using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Bottles;

/// <summary>A bottle of liquid under a cushion of gas, as it was filled.</summary>
public sealed record Bottle
{
    /// <summary>Inside volume, over 0.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Mass of agent, over 0; a fill given as a volume or a fill density has been turned into mass.</summary>
    public required Mass Fill { get; init; }

    /// <summary>Absolute pressure of the cushion when it was charged.</summary>
    public required Pressure ChargePressure { get; init; }

    /// <summary>Temperature of bottle and contents when it was charged.</summary>
    public required Temperature ChargeTemperature { get; init; }

    /// <summary>Identical bottles let go together, each with its own outlet; 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The gas of the cushion.</summary>
    public CushionGas CushionGas { get; init; }

    /// <summary>How the cushion takes heat while it expands.</summary>
    public CushionHeat CushionHeat { get; init; }

    /// <summary>Time from the signal to the open valve, 0 or more.</summary>
    public Duration OpeningTime { get; init; }

    /// <summary>Absolute working pressure marked on the bottle; null where not given.</summary>
    public Pressure? WorkingPressure { get; init; }

    /// <summary>Mass of the empty bottle with its valve; null where not given.</summary>
    public Mass? EmptyMass { get; init; }

    /// <summary>Inside diameter and length; null where not given.</summary>
    public BottleShape? Shape { get; init; }

    /// <summary>Direction from base to outlet end in the layout's axes, three numbers of any length but zero: the bottle's own z.</summary>
    /// <remarks>Its own x and y follow from the layout's by the smallest rotation that takes the layout's z to it; straight down, by half a turn about x.</remarks>
    public ImmutableArray<double> Axis { get; init; } = [0, 0, 1];

    /// <summary>The shell; null where not given.</summary>
    public BottleWall? Wall { get; init; }

    /// <summary>Dip tube and valve; null for an outlet without loss.</summary>
    public BottleOutlet? Outlet { get; init; }
}
