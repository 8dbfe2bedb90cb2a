namespace FlowCalc.Circuits;

/// <summary>What a range of currents does to an actuator.</summary>
public enum ActuatorEffect
{
    /// <summary>Even the highest is less than may fire it.</summary>
    Rests,

    /// <summary>The highest may fire it, the lowest is not sure to.</summary>
    MayFire,

    /// <summary>Even the lowest is sure to fire it.</summary>
    Fires,
}
