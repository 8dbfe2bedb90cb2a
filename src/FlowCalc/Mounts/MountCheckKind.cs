namespace FlowCalc.Mounts;

/// <summary>What of a mount is held against what it bears.</summary>
public enum MountCheckKind
{
    /// <summary>A bolt by shear and pull together.</summary>
    BoltStrength,

    /// <summary>A bolt's pull, with prying, against its proof load.</summary>
    BoltProof,

    /// <summary>A bolt by pull, shear and the bending of a spacer together, against its proof stress.</summary>
    BoltBending,

    /// <summary>A bolt's pull against its preload.</summary>
    JointOpening,

    /// <summary>A head, nut or washer through a sheet.</summary>
    PullThrough,

    /// <summary>The edge of a hole.</summary>
    Bearing,

    /// <summary>The thread of a tapped hole.</summary>
    ThreadStripping,

    /// <summary>Bending of the bracket's foot.</summary>
    FootBending,

    /// <summary>Bending of the structure's sheet.</summary>
    PanelBending,

    /// <summary>Bending of an adapter plate.</summary>
    AdapterBending,

    /// <summary>Tension in a strap.</summary>
    StrapTension,

    /// <summary>The bottle along its axis, where no stop is.</summary>
    Slip,

    /// <summary>A stop at an end of the bottle.</summary>
    EndStop,
}
