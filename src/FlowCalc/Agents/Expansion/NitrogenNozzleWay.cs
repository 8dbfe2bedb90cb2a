namespace FlowCalc.Agents;

/// <summary>Expansion of an agent with nitrogen at constant entropy, tabulated as far as it is asked and integrated, since its work is a small part of its enthalpy.</summary>
internal sealed class NitrogenNozzleWay : INozzleWay
{
    const int Pieces = 24;

    // To this part of the total pressure: throats lie above it.
    const double Deepest = 0.02;

    // Of a short nozzle (Diener, Schmidt 2004, from memory).
    const double ShortNozzle = 0.6;

    readonly NitrogenMixture mixture;
    readonly double stagnation, step, entropy, liquidVolume, gasVolume, gasPart, part;
    readonly double[] volumes = new double[Pieces + 1], works = new double[Pieces + 1];
    int known;
    double temperature, last, slope = double.NaN;

    /// <summary>Makes the way.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="mixture">Agent and nitrogen.</param>
    /// <param name="stagnation">Absolute total pressure, Pa.</param>
    /// <param name="start">State there.</param>
    public NitrogenNozzleWay(Fluid agent, NitrogenMixture mixture, double stagnation, in MixtureState start)
    {
        (this.mixture, this.stagnation, entropy, temperature, last) = (mixture, stagnation, start.Entropy, start.Temperature, double.NaN);
        step = -Math.Log(Deepest) / Pieces;
        var point = agent.Saturation!.AtTemperature(start.Temperature);
        (gasPart, liquidVolume) = (start.GasPart, 1 / point.LiquidDensity);
        gasVolume = gasPart > 0 ? Math.Max((start.Volume - (1 - gasPart) * liquidVolume) / gasPart, 0) : 0;
        volumes[0] = start.Volume;
        // What drives boiling: the agent's own vapour pressure, in its share of the pressure.
        var latent = point.Latent;
        var cold = agent.Saturation.AtTemperature(point.Temperature - 0.5);
        var heatCapacity = (point.LiquidEnthalpy - cold.LiquidEnthalpy) / 0.5;
        part = heatCapacity * point.Temperature * point.Pressure * (1 / point.VapourDensity - 1 / point.LiquidDensity) / (latent * latent);
    }

    /// <inheritdoc/>
    public bool HasDelay => true;

    /// <inheritdoc/>
    public (double Volume, double Work) Equilibrium(double pressure)
    {
        var x = Math.Log(stagnation / pressure) / step;
        var i = (int)Math.Clamp(x, 0, Pieces - 1);
        while (known <= i) AddNext();
        var u = x - i;
        // p·v straight between nodes.
        var (first, second) = (volumes[i] * Math.Exp(-i * step), volumes[i + 1] * Math.Exp(-(i + 1) * step));
        var product = first + u * (second - first);
        return (product * stagnation / pressure, works[i] + stagnation * step * u * (first + 0.5 * u * (second - first)));
    }

    void AddNext()
    {
        var i = ++known;
        var pressure = stagnation * Math.Exp(-i * step);
        // On as it went so far.
        var guess = double.IsNaN(last) ? temperature : 2 * temperature - last;
        (last, temperature) = (temperature, guess);
        var state = NitrogenStream.Find(mixture, pressure, entropy, isEnthalpy: false, ref temperature, ref slope);
        // Where the data end the parts stay and the pressure spreads them.
        volumes[i] = double.IsNaN(state.Volume) ? volumes[i - 1] * Math.Exp(step) : state.Volume;
        // ∫v dp over ln p of p·v, which is nearly straight: by the trapezium.
        works[i] = works[i - 1] + 0.5 * step * (volumes[i - 1] * pressure * Math.Exp(step) + volumes[i] * pressure);
    }

    /// <inheritdoc/>
    public (double Volume, double Work) Frozen(double pressure)
    {
        var (liquid, liquidWork) = ((1 - gasPart) * liquidVolume, (1 - gasPart) * (stagnation - pressure) * liquidVolume);
        if (!(gasPart > 0)) return (liquid, liquidWork);
        var (gas, work) = IsentropicGas.At(gasVolume, stagnation, 1.3, pressure);
        return (liquid + gasPart * gas, liquidWork + gasPart * work);
    }

    /// <inheritdoc/>
    public double Part(double ratio) => Math.Min(Math.Pow(gasPart + part * Math.Log(1 / ratio), ShortNozzle), 1);
}
