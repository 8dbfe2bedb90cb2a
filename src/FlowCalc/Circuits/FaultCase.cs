namespace FlowCalc.Circuits;

/// <summary>What comes of one fault.</summary>
/// <param name="Fault">The fault.</param>
/// <param name="Margin">Least current over all-fire current of all actuators at the pushes that are there to fire them, with the source at its weakest; null where none fires without the fault.</param>
/// <param name="IsShown">Whether a lamp shows it: one is lit in some row of the state table that is dark without it, or the other way round.</param>
/// <param name="Unasked">The largest current over what may fire it of any actuator where nothing is meant to fire, with the source at its strongest.</param>
/// <param name="SourceCurrent">The largest current of the source at its strongest in any row, A.</param>
public readonly record struct FaultCase(CircuitFault Fault, double? Margin, bool IsShown, double Unasked, double SourceCurrent)
{
    /// <summary>Whether an actuator does not fire that would fire without the fault.</summary>
    public bool KeepsFromFiring => Margin < 1;

    /// <summary>Whether an actuator may fire where nothing is meant to.</summary>
    public bool FiresUnasked => Unasked >= 1;
}
