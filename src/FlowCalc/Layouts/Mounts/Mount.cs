using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts.Mounts;

/// <summary>How the bottle is held: a bracket bolted to a structure, with straps round the bottle. Places are in the mount's own axes: z away from the structure, x and y in its face.</summary>
public sealed record Mount
{
    /// <summary>From the structure to the bottle, in the layout's axes, of any length but 0: the mount's z.</summary>
    public required Direction Normal { get; init; }

    /// <summary>The mount's x in the layout's axes, of any length but 0 and not along the normal; only its part square to the normal counts.</summary>
    public required Direction X { get; init; }

    /// <summary>Middle of the bottle; null where the centre of mass is stated.</summary>
    public Place? BottleAt { get; init; }

    /// <summary>Centre of mass of the full bottle with its valve; null where the middle of the bottle is given.</summary>
    public Place? CentreOfMass { get; init; }

    /// <summary>Mass of the full bottle with its valve; null where the bottle's empty mass and fill give it.</summary>
    public Mass? FullMass { get; init; }

    /// <summary>What else hangs on the bolts: bracket, straps, a cover.</summary>
    public ImmutableArray<AddedMass> Masses { get; init; } = [];

    /// <summary>The bolts into the structure.</summary>
    public required MountBolts Bolts { get; init; }

    /// <summary>The sheet of the structure that they go through; null where not given.</summary>
    public MountPanel? Panel { get; init; }

    /// <summary>The bracket's foot under each bolt; null where not given.</summary>
    public MountFoot? Foot { get; init; }

    /// <summary>Length of the spacers between structure and bracket; null for none.</summary>
    public Length? Spacers { get; init; }

    /// <summary>Plate between structure and bracket with bolts of its own; null for none.</summary>
    public MountAdapter? Adapter { get; init; }

    /// <summary>The straps; null where the document says nothing of them.</summary>
    public ImmutableArray<MountStrap>? Straps { get; init; }

    /// <summary>Friction between bottle, straps and cradle, dimensionless; null where not given.</summary>
    public double? Friction { get; init; }

    /// <summary>Arc of the bottle that lies in the cradle; null where not given.</summary>
    public Angle? Cradle { get; init; }

    /// <summary>Stops against which the ends of the bottle lie, one an end at most; null where the document says nothing of them.</summary>
    public ImmutableArray<EndStop>? EndStops { get; init; }

    /// <summary>Whether the bottle stands within the main structure; null where the document does not say.</summary>
    public bool? IsInsideStructure { get; init; }

    /// <summary>The document's own load cases; empty where the application decides.</summary>
    public ImmutableArray<MountLoad> Loads { get; init; } = [];
}
