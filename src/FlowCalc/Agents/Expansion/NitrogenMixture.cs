namespace FlowCalc.Agents;

/// <summary>A liquefied agent with nitrogen of fixed mass, in equilibrium at a temperature and pressure: the fast form of the bottle's own model.</summary>
/// <remarks>
/// Nitrogen by its second virial coefficient, the liquid's compressibility as it is at saturation. Henry's constant does not change with temperature, so that dissolving takes no heat: dissolved
/// nitrogen has the enthalpy of the gas, and the entropy of the gas at the partial pressure with which it is in equilibrium.
/// </remarks>
internal sealed class NitrogenMixture
{
    const double MolarGasConstant = 8.314462618;

    // cp of nitrogen, J/(mol·K), from 200 to 400 K within half a per cent.
    const double NitrogenHeatCapacity = 29.12;

    readonly Fluid agent;
    readonly SaturationCurve saturation;
    readonly NitrogenSolubility solubility;
    readonly double agentMoles, nitrogenMoles, compressibility, nitrogenMass, virial;

    /// <summary>Makes the mixture of a kilogram.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="solubility">How nitrogen dissolves in it.</param>
    /// <param name="nitrogenPart">Part of the mass that is nitrogen, 0 to 1.</param>
    /// <param name="temperature">Temperature about which the liquid's compressibility and nitrogen's virial coefficient are taken, K.</param>
    public NitrogenMixture(Fluid agent, NitrogenSolubility solubility, double nitrogenPart, double temperature)
    {
        (this.agent, this.solubility, saturation) = (agent, solubility, agent.Saturation!);
        var nitrogen = Fluid.Of("nitrogen");
        nitrogenMass = nitrogen.MolarMass;
        (agentMoles, nitrogenMoles) = ((1 - nitrogenPart) / agent.MolarMass, nitrogenPart / nitrogenMass);
        var point = saturation.AtTemperature(temperature);
        compressibility = 1 / (point.LiquidDensity * agent.Exact(temperature, point.LiquidDensity).PressurePerDensity);
        virial = nitrogen.Equation.Residual(1e-9, nitrogen.CriticalTemperature / temperature).ByDensity / (nitrogen.CriticalDensity / nitrogenMass);
    }

    /// <summary>The mixture at a temperature and pressure.</summary>
    /// <param name="temperature">Temperature, K.</param>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    /// <returns>Its state per kilogram; NaN throughout where the agent alone would boil away.</returns>
    public MixtureState At(double temperature, double pressure)
    {
        var point = saturation.AtTemperature(temperature);
        var rt = MolarGasConstant * temperature;
        var over = pressure - point.Pressure;
        var molarVolume = agent.MolarMass / point.LiquidDensity * (1 - compressibility * over);
        var raised = point.Pressure * Math.Exp(molarVolume * over / rt);
        var henry = solubility.Constant * Math.Exp(solubility.MolarVolume * over / rt);
        var fugacity = Math.Exp(virial * Math.Max(pressure - raised, 0) / rt);
        var x = (pressure - raised) * fugacity / (henry - raised * fugacity);
        var ratio = x / (1 - x);
        // All of the nitrogen fits into the liquid.
        if (ratio * agentMoles >= nitrogenMoles) return Liquid(point, temperature, pressure, molarVolume, henry, fugacity);
        var partial = pressure - (1 - x) * raised;
        if (!(partial > 0)) return MixtureState.Nothing;
        var nitrogenVolume = rt / partial + virial;
        var agentPressure = pressure - partial;
        var vapourPerVolume = point.VapourDensity / agent.MolarMass * agentPressure / point.Pressure;
        // Vapour fills the same volume as the nitrogen that has left the liquid.
        var perNitrogen = nitrogenVolume * vapourPerVolume;
        var gas = (nitrogenMoles - agentMoles * ratio) / (1 - perNitrogen * ratio);
        var vapour = gas * perNitrogen;
        var liquid = agentMoles - vapour;
        if (!(liquid >= 0 && gas >= 0)) return MixtureState.Nothing;
        var volume = liquid * (molarVolume + ratio * solubility.MolarVolume) + gas * nitrogenVolume;
        var mass = agent.MolarMass;
        var enthalpy = liquid * mass * (point.LiquidEnthalpy + over / point.LiquidDensity) + vapour * mass * point.VapourEnthalpy + nitrogenMoles * NitrogenHeatCapacity * temperature;
        var entropy = liquid * (mass * point.LiquidEntropy - MolarGasConstant * Math.Log(1 - x)) + vapour * (mass * point.VapourEntropy + MolarGasConstant * Math.Log(point.Pressure / agentPressure))
            + nitrogenMoles * (NitrogenHeatCapacity * Math.Log(temperature) - MolarGasConstant * Math.Log(partial));
        return new(volume, enthalpy, entropy, vapour * mass + gas * nitrogenMass, temperature);
    }

    MixtureState Liquid(in SaturatedPoint point, double temperature, double pressure, double molarVolume, double henry, double fugacity)
    {
        var x = nitrogenMoles / (nitrogenMoles + agentMoles);
        var mass = agent.MolarMass;
        var partial = Math.Max(x * henry / fugacity, 1e-9);
        return new(
            agentMoles * molarVolume + nitrogenMoles * solubility.MolarVolume,
            agentMoles * mass * (point.LiquidEnthalpy + (pressure - point.Pressure) / point.LiquidDensity) + nitrogenMoles * NitrogenHeatCapacity * temperature,
            agentMoles * (mass * point.LiquidEntropy - MolarGasConstant * Math.Log(1 - x)) + nitrogenMoles * (NitrogenHeatCapacity * Math.Log(temperature) - MolarGasConstant * Math.Log(partial)),
            0, temperature);
    }

    /// <summary>Pressure at which the last gas dissolves at a temperature, Pa.</summary>
    /// <param name="temperature">Temperature, K.</param>
    public double Bubble(double temperature)
    {
        var point = saturation.AtTemperature(temperature);
        var x = nitrogenMoles / (nitrogenMoles + agentMoles);
        var pressure = point.Pressure;
        for (var i = 0; i < 50; i++)
        {
            var over = pressure - point.Pressure;
            var rt = MolarGasConstant * temperature;
            var partial = x * solubility.Constant * Math.Exp(solubility.MolarVolume * over / rt) / Math.Exp(virial * over / rt);
            var next = partial + (1 - x) * point.Pressure * Math.Exp(agent.MolarMass / point.LiquidDensity * over / rt);
            if (Math.Abs(next - pressure) < 1e-9 * pressure) return next;
            pressure = next;
        }
        return pressure;
    }
}

/// <summary>A kilogram of agent and nitrogen.</summary>
/// <param name="Volume">Volume, m³/kg.</param>
/// <param name="Enthalpy">Enthalpy, J/kg.</param>
/// <param name="Entropy">Entropy, J/(kg·K).</param>
/// <param name="GasPart">Part of the mass that is gas, 0 to 1.</param>
/// <param name="Temperature">Temperature, K.</param>
internal readonly record struct MixtureState(double Volume, double Enthalpy, double Entropy, double GasPart, double Temperature)
{
    /// <summary>No state.</summary>
    public static MixtureState Nothing => new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN);
}
