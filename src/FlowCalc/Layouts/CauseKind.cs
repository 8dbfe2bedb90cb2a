namespace FlowCalc.Layouts;

/// <summary>What may make a system that was built flow otherwise than the one that was drawn.</summary>
public enum CauseKind
{
    /// <summary>Nothing: the layout as drawn.</summary>
    AsDrawn,

    /// <summary>The supply of the test was at another pressure than was read.</summary>
    SupplyPressure,

    /// <summary>All tube has one other roughness.</summary>
    Roughness,

    /// <summary>All bores are larger or smaller by one factor, as another wall or an oval tube makes them.</summary>
    Bore,

    /// <summary>Every type of nozzle has a K-factor of its own that is not the stated one.</summary>
    Nozzles,

    /// <summary>One run is kinked, pinched or blocked.</summary>
    Run,
}
