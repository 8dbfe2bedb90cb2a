namespace FlowCalc.Agents;

/// <summary>How far a flashing agent boils within a nozzle.</summary>
public enum NozzleModel
{
    /// <summary>Part of what equilibrium would boil, since a short nozzle leaves no time (Diener, Schmidt 2004, from memory).</summary>
    Delayed,

    /// <summary>Equilibrium at each pressure: the least flow.</summary>
    Equilibrium,

    /// <summary>What enters as liquid leaves as liquid: the greatest flow.</summary>
    Frozen,
}
