namespace FlowCalc.Studies.Sizing;

/// <summary>What makes one choice that meets the wish better than another.</summary>
public enum SizingObjective
{
    /// <summary>As few runs and nozzles exchanged as can be.</summary>
    FewestChanges,

    /// <summary>The cheapest tube in the free runs.</summary>
    LeastCost,

    /// <summary>The lightest tube in the free runs.</summary>
    LeastMass,

    /// <summary>The smallest deviation of any nozzle from its wanted share.</summary>
    BestBalance,

    /// <summary>The shortest time of the requirement's part, in the slowest case.</summary>
    ShortestTime,
}
