namespace FlowCalc.Agents;

/// <summary>Expansion below the pressures that the data hold: the pressure alone spreads the stream.</summary>
/// <param name="volume">Specific volume at the start, m³/kg.</param>
/// <param name="stagnation">Absolute total pressure, Pa.</param>
internal sealed class HeldWay(double volume, double stagnation) : INozzleWay
{
    /// <inheritdoc/>
    public (double Volume, double Work) Equilibrium(double pressure) => (volume * stagnation / pressure, volume * stagnation * Math.Log(stagnation / pressure));

    /// <inheritdoc/>
    public (double Volume, double Work) Frozen(double pressure) => Equilibrium(pressure);

    /// <inheritdoc/>
    public bool HasDelay => false;

    /// <inheritdoc/>
    public double Part(double ratio) => 1;
}
