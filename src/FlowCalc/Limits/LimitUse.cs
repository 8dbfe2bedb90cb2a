namespace FlowCalc.Limits;

/// <summary>The answers that a limit is held against.</summary>
[Flags]
public enum LimitUse
{
    /// <summary>None; no limit is so.</summary>
    None = 0,

    /// <summary>A steady flow.</summary>
    Flow = 1,

    /// <summary>A discharge through time.</summary>
    Discharge = 2,

    /// <summary>A cut list.</summary>
    CutList = 4,

    /// <summary>A mount.</summary>
    Mount = 8,

    /// <summary>A firing circuit.</summary>
    Circuit = 16,

    /// <summary>Dates and upkeep.</summary>
    Upkeep = 32,

    /// <summary>Where sprays land and what zones get.</summary>
    Coverage = 64,

    /// <summary>A test of the built system.</summary>
    Calibration = 128,

    /// <summary>A steady flow and a discharge.</summary>
    Both = Flow | Discharge,
}
