namespace FlowCalc.Agents;

/// <summary>An ideal gas of constant heat capacity: what blows out of the line after the liquid, and the limit of every gas.</summary>
/// <param name="gasConstant">Specific gas constant, J/(kg·K).</param>
/// <param name="ratio">Ratio of heat capacities, over 1.</param>
/// <param name="temperature">Total temperature, K.</param>
/// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
internal sealed class IdealGasStream(double gasConstant, double ratio, double temperature, double viscosity) : IStream
{
    /// <inheritdoc/>
    public double Kink => double.NaN;

    /// <inheritdoc/>
    public double Floor => double.NaN;

    /// <inheritdoc/>
    public StreamState At(double pressure) => new(pressure / (gasConstant * temperature), temperature, 1, viscosity);

    /// <inheritdoc/>
    public INozzleWay Nozzle(double stagnation) => new GasWay(gasConstant * temperature / stagnation, stagnation, ratio);

    sealed class GasWay(double volume, double stagnation, double ratio) : INozzleWay
    {
        public (double Volume, double Work) Equilibrium(double pressure) => IsentropicGas.At(volume, stagnation, ratio, pressure);

        public (double Volume, double Work) Frozen(double pressure) => Equilibrium(pressure);

        public bool HasDelay => false;

        public double Part(double ratio) => 1;
    }
}
