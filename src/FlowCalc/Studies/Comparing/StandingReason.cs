namespace FlowCalc.Studies.Comparing;

/// <summary>What decides between two layouts, in the order in which it does.</summary>
public enum StandingReason
{
    /// <summary>One has no flow.</summary>
    NoFlow,

    /// <summary>Their verdicts.</summary>
    Verdict,

    /// <summary>How many places fail.</summary>
    Fails,

    /// <summary>How many places are warned of.</summary>
    Warns,

    /// <summary>How far the worst nozzle is from its share.</summary>
    Deviation,

    /// <summary>How long the slowest case takes.</summary>
    Time,

    /// <summary>Nothing: they stand in the request's order.</summary>
    Order,
}
