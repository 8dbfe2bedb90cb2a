namespace FlowCalc.Studies.Sizing;

/// <summary>The parts of a wish.</summary>
public enum SizingRequirement
{
    /// <summary>The deviation.</summary>
    Deviation,

    /// <summary>The time.</summary>
    Within,

    /// <summary>The least pressure.</summary>
    LeastPressure,
}
