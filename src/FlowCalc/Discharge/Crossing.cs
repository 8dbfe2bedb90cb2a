namespace FlowCalc.Discharge;

/// <summary>What may end a step before its time.</summary>
internal enum CrossingKind
{
    /// <summary>None.</summary>
    None,

    /// <summary>A front of liquid comes to the end of a run.</summary>
    LiquidAtEnd,

    /// <summary>A front of gas comes to the end of a run, or of the liquid in it.</summary>
    GasAtEnd,

    /// <summary>The inlet of the dip tube uncovers.</summary>
    Uncovered,

    /// <summary>The valve is open.</summary>
    ValveOpen,

    /// <summary>The bottle is at the end pressure.</summary>
    Equalised,
}

/// <summary>One such thing.</summary>
/// <param name="Kind">What.</param>
/// <param name="Run">In which run; 0 where none is meant.</param>
internal readonly record struct Crossing(CrossingKind Kind, int Run);
