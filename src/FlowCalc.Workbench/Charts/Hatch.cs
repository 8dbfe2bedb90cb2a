namespace FlowCalc.Workbench.Charts;

/// <summary>Lines over an area, by which it is told apart without colour.</summary>
public enum Hatch
{
    /// <summary>No lines.</summary>
    None,

    /// <summary>Lines that rise to the right.</summary>
    Rising,

    /// <summary>Lines that fall to the right.</summary>
    Falling,

    /// <summary>Upright lines.</summary>
    Upright,

    /// <summary>Level lines.</summary>
    Level,

    /// <summary>Lines that rise and lines that fall.</summary>
    Crossed,
}
