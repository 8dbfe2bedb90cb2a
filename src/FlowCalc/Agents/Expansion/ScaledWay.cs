namespace FlowCalc.Agents;

/// <summary>Expansion from below the pressures that the data hold: as from their end, with pressures smaller and volumes larger in one proportion, so that nothing jumps there.</summary>
/// <param name="end">The expansion from the end of the data.</param>
/// <param name="ratio">Pressure at the end of the data over the total one, over 1.</param>
internal sealed class ScaledWay(INozzleWay end, double ratio) : INozzleWay
{
    /// <inheritdoc/>
    public bool HasDelay => end.HasDelay;

    /// <inheritdoc/>
    public double LeastPart => end.LeastPart;

    /// <inheritdoc/>
    public (double Volume, double Work) Equilibrium(double pressure)
    {
        var (volume, work) = end.Equilibrium(pressure * ratio);
        return (volume * ratio, work);
    }

    /// <inheritdoc/>
    public (double Volume, double Work) Frozen(double pressure)
    {
        var (volume, work) = end.Frozen(pressure * ratio);
        return (volume * ratio, work);
    }

    /// <inheritdoc/>
    public double Part(double ratio) => end.Part(ratio);
}
