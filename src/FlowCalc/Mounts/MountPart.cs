namespace FlowCalc.Mounts;

/// <summary>A part of a mount that is checked.</summary>
public enum MountPart
{
    /// <summary>The bolts into the structure, and the sheet there.</summary>
    Structure,

    /// <summary>The bolts between bracket and adapter plate, and that plate.</summary>
    Adapter,

    /// <summary>A strap.</summary>
    Strap,

    /// <summary>The base end of the bottle.</summary>
    BaseEnd,

    /// <summary>The outlet end of the bottle.</summary>
    OutletEnd,
}
