namespace FlowCalc.Agents;

/// <summary>A liquefied agent with nitrogen in it on its way: nitrogen comes out of solution as the pressure falls, then the agent boils.</summary>
/// <remarks>In tubes equilibrium, at constant enthalpy. Below the data of saturation the mixture keeps its parts and spreads with the pressure.</remarks>
internal sealed class NitrogenStream : IStream
{
    // Of the temperature: the step after one so small leaves nothing.
    const double Settled = 1e-6;

    readonly NitrogenMixture mixture;
    readonly Fluid agent;
    readonly double enthalpy, nitrogenViscosity;
    double last, slope = double.NaN;

    /// <summary>Makes the stream that a bottle's liquid gives.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="solubility">How nitrogen dissolves in it.</param>
    /// <param name="nitrogenPart">Part of the liquid's mass that is nitrogen, 0 to 1.</param>
    /// <param name="temperature">Temperature of the liquid, K.</param>
    /// <param name="pressure">Absolute pressure in the bottle, Pa.</param>
    public NitrogenStream(Fluid agent, NitrogenSolubility solubility, double nitrogenPart, double temperature, double pressure)
    {
        (this.agent, mixture, last) = (agent, new NitrogenMixture(agent, solubility, nitrogenPart, temperature), temperature);
        var bubble = mixture.Bubble(temperature);
        // Nitrogen that the bottle still holds in excess comes out as the stream enters the tube.
        enthalpy = mixture.At(temperature, Math.Max(pressure, bubble * (1 + 1e-9))).Enthalpy;
        Kink = bubble;
        nitrogenViscosity = GasTransport.Nitrogen.Viscosity(temperature);
    }

    /// <inheritdoc/>
    public double Kink { get; }

    /// <inheritdoc/>
    public double Floor => double.NaN;

    /// <inheritdoc/>
    public StreamState At(double pressure)
    {
        var state = Find(mixture, pressure, enthalpy, isEnthalpy: true, ref last, ref slope);
        var gas = state.GasPart > 0 ? state.GasPart / nitrogenViscosity : 0;
        return new(1 / state.Volume, state.Temperature, state.GasPart, 1 / (gas + (1 - state.GasPart) / agent.LiquidViscosity(state.Temperature)));
    }

    /// <inheritdoc/>
    public INozzleWay Nozzle(double stagnation)
    {
        var start = Find(mixture, stagnation, enthalpy, isEnthalpy: true, ref last, ref slope);
        return new NitrogenNozzleWay(agent, mixture, stagnation, start);
    }

    /// <summary>The state at a pressure with an enthalpy or an entropy.</summary>
    /// <param name="mixture">The mixture.</param>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    /// <param name="target">Enthalpy, J/kg, or entropy, J/(kg·K).</param>
    /// <param name="isEnthalpy">Which.</param>
    /// <param name="temperature">Temperature to start from, K; the answer on return.</param>
    /// <param name="slope">Slope of the target by temperature nearby; this one's on return; NaN at first.</param>
    public static MixtureState Find(NitrogenMixture mixture, double pressure, double target, bool isEnthalpy, ref double temperature, ref double slope)
    {
        // Too warm, the agent alone would boil away and there is no state: bisect down into the range, then regula falsi by secants.
        double Of(in MixtureState state) => isEnthalpy ? state.Enthalpy : state.Entropy;
        var (low, high) = (double.NaN, double.NaN);
        var (t, last, lastMiss) = (temperature, double.NaN, double.NaN);
        var state = mixture.At(t, pressure);
        for (var i = 0; i < 80; i++)
        {
            var miss = Of(state) - target;
            if (double.IsNaN(miss) || miss > 0) high = t;
            else low = t;
            if (miss == 0) break;
            double next;
            if (double.IsNaN(miss)) next = double.IsNaN(low) ? t - 2 : 0.5 * (low + t);
            else
            {
                if (!double.IsNaN(lastMiss) && t != last) slope = (miss - lastMiss) / (t - last);
                next = slope > 0 ? t - miss / slope : t - Math.Sign(miss) * 0.05;
            }
            if (!double.IsNaN(low) && !double.IsNaN(high) && !(next > low && next < high)) next = 0.5 * (low + high);
            if (!double.IsFinite(next)) break;
            next = t + Math.Clamp(next - t, -15, 15);
            if (!double.IsNaN(miss)) (last, lastMiss) = (t, miss);
            var isLast = Math.Abs(next - t) < Settled * t;
            t = next;
            state = mixture.At(t, pressure);
            if (isLast) break;
        }
        if (!double.IsNaN(state.Volume)) temperature = t;
        return state;
    }
}
