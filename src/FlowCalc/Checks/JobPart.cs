namespace FlowCalc.Checks;

/// <summary>The parts of the job, in the order in which they are answered.</summary>
public enum JobPart
{
    /// <summary>One instant of the flow.</summary>
    Flow,

    /// <summary>The discharge through time.</summary>
    Discharge,

    /// <summary>What is cut, bent, clipped and ordered.</summary>
    CutList,

    /// <summary>The bottle's mount.</summary>
    Mount,

    /// <summary>The firing circuit.</summary>
    Circuit,

    /// <summary>Where sprays land, and what zones get.</summary>
    Coverage,

    /// <summary>Dates, weight and gauge.</summary>
    Upkeep,

    /// <summary>What a test says of the built system.</summary>
    Calibration,
}
