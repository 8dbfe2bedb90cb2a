using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Circuits;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Limits;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>A checked layout: a tree of runs from one supply to its nozzles. Pressures are absolute; points and runs keep the document's order.</summary>
public sealed record Layout
{
    internal const double UsualFilm = 0.1;
    internal const double UsualLag = 0.3;

    /// <summary>Title; null for none.</summary>
    public string? Title { get; init; }

    /// <summary>Free text; null for none.</summary>
    public string? Note { get; init; }

    /// <summary>Where the system is used.</summary>
    public Application Application { get; init; }

    /// <summary>The agent.</summary>
    public required Agent Agent { get; init; }

    /// <summary>Absolute pressure of the surroundings.</summary>
    public required Pressure AmbientPressure { get; init; }

    /// <summary>Temperature of agent and bottle for a steady flow; within the agent's range and not below its freezing point.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>What drives the flow.</summary>
    public required Supply Supply { get; init; }

    /// <summary>The zones, in the document's order.</summary>
    public ImmutableArray<Zone> Zones { get; init; } = [];

    /// <summary>The points, in the document's order; exactly one <see cref="SupplyPoint"/>.</summary>
    public required ImmutableArray<LayoutPoint> Points { get; init; }

    /// <summary>The runs, in the document's order: every point but the supply is fed by exactly one.</summary>
    public required ImmutableArray<Run> Runs { get; init; }

    /// <summary>Sizes of tube that the document names, in its order: what a cure may offer.</summary>
    public ImmutableArray<Tube> Tubes { get; init; } = [];

    /// <summary>Nozzles that the document names, in its order: what a cure may offer.</summary>
    public ImmutableArray<NozzleType> Nozzles { get; init; } = [];

    /// <summary>Cases of the discharge; null for the defaults.</summary>
    public DischargeCases? Cases { get; init; }

    /// <summary>What the discharge has to do; null where the application decides.</summary>
    public Requirement? Requirement { get; init; }

    /// <summary>Limits that the document states itself; they stand before the defaults.</summary>
    public ImmutableArray<Limit> Limits { get; init; } = [];

    /// <summary>Part of the liquid in the tubes that stays on their walls as a film when gas follows, 0 to 0.5, dimensionless; 0.1 where not given. The steady flow does not use it.</summary>
    public double Film { get; init; } = UsualFilm;

    /// <summary>How far an agent that boils does so within a nozzle.</summary>
    public NozzleModel NozzleModel { get; init; }

    /// <summary>Time in which dissolved nitrogen comes out of the liquid in the bottle; null where it stays dissolved; 0.3 s where not given. The steady flow does not use it.</summary>
    public Duration? NitrogenLag { get; init; } = Duration.FromSeconds(UsualLag);

    /// <summary>How tube is cut, bent and clipped; null where the document says nothing of it. The flow does not use it.</summary>
    public Cutting? Cutting { get; init; }

    /// <summary>How the bottle is held; null where the document says nothing of it. The flow does not use it.</summary>
    public Mount? Mount { get; init; }
    /// <summary>The firing circuit; null where the document says nothing of it. The flow does not use it.</summary>
    public Circuit? Circuit { get; init; }

    /// <summary>Age and upkeep of the bottle; null where the document says nothing of it. The flow does not use it.</summary>
    public ServiceBook? Service { get; init; }

    /// <summary>What the nozzles are to reach; null where the document says nothing of it. The flow does not use it.</summary>
    public CoveragePlan? Coverage { get; init; }

    /// <summary>What a test of the built system showed; null where the document says nothing of one. The flow does not use it.</summary>
    public Measured? Measured { get; init; }

    /// <summary>What the document left open and what was taken.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];
}
