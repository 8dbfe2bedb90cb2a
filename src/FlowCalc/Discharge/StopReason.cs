namespace FlowCalc.Discharge;

/// <summary>Why a discharge has ended.</summary>
public enum StopReason
{
    /// <summary>Gas has blown the lines until the bottle was at the surroundings' pressure.</summary>
    Equalised,

    /// <summary>The cushion has no pressure left that moves liquid, and no gas leaves.</summary>
    FlowStopped,

    /// <summary>The agent in the bottle has come to its triple point: what is left turns solid, which is not modelled.</summary>
    TriplePoint,
}
