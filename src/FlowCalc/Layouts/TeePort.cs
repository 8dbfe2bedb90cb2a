namespace FlowCalc.Layouts;

/// <summary>A port of a tee: one of the two in line, or the one at right angles.</summary>
public enum TeePort
{
    /// <summary>A port in line.</summary>
    Run,

    /// <summary>The port at right angles.</summary>
    Branch,
}
