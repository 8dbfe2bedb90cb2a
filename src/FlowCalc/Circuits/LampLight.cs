namespace FlowCalc.Circuits;

/// <summary>What a lamp shows at a range of currents.</summary>
public enum LampLight
{
    /// <summary>It is not seen to be lit at any of them.</summary>
    Dark,

    /// <summary>It is seen to be lit at the highest, not at the lowest.</summary>
    Unsure,

    /// <summary>It is seen to be lit at all of them.</summary>
    Lit,
}
