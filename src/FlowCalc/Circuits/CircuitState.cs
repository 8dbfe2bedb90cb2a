namespace FlowCalc.Circuits;

/// <summary>How the circuit's switches are set.</summary>
public enum CircuitState
{
    /// <summary>Safe: nothing may fire, whatever is pressed.</summary>
    Off,

    /// <summary>Lamps show whether source and loop are sound; nothing may fire.</summary>
    Test,

    /// <summary>A press for firing fires.</summary>
    Armed,
}
