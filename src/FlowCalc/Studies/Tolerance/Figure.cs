namespace FlowCalc.Studies.Tolerance;

/// <summary>A number of an answer whose spread is told.</summary>
public enum Figure
{
    /// <summary>Mass flow of the whole layout, or of a nozzle, kg/s.</summary>
    MassFlow,

    /// <summary>Gauge pressure at a nozzle, Pa.</summary>
    Pressure,

    /// <summary>Part of the whole that a nozzle or a zone gets, 0 to 1.</summary>
    Share,

    /// <summary>Share over wanted share, less 1.</summary>
    Deviation,

    /// <summary>Deviation of the nozzle that is fed worst.</summary>
    LowestDeviation,

    /// <summary>Deviation of the nozzle that is fed best.</summary>
    HighestDeviation,

    /// <summary>Agent out of a nozzle, kg.</summary>
    Mass,

    /// <summary>When agent comes to a nozzle, s.</summary>
    Arrival,

    /// <summary>When agent comes to the last nozzle, s.</summary>
    LastArrival,

    /// <summary>When 95 % of the contents, or of what a nozzle gives, is out, s.</summary>
    Time95,

    /// <summary>When the part that the requirement names is out, s.</summary>
    RequiredTime,

    /// <summary>When the dip tube begins to draw gas, s.</summary>
    LiquidEnd,

    /// <summary>When the discharge is over, s.</summary>
    End,

    /// <summary>Greatest flow out of all nozzles together, kg/s.</summary>
    PeakMassFlow,

    /// <summary>Agent left in bottles and tubes, kg.</summary>
    LeftBehind,
}
