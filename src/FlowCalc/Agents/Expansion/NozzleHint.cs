namespace FlowCalc.Agents;

/// <summary>Where a neighbouring search for the throat ended; empty at first.</summary>
internal struct NozzleHint
{
    /// <summary>Throat pressure over total pressure.</summary>
    public double Throat;

    /// <summary>The same of the choked equilibrium expansion.</summary>
    public double Equilibrium;

    /// <summary>Of a gas at the speed of sound: temperature over total temperature.</summary>
    public double SonicTemperature;

    /// <summary>Of a gas at the speed of sound: density over total density.</summary>
    public double SonicDensity;
}
