namespace FlowCalc.Bottles;

/// <summary>A bottle of a gas or a liquefied gas at rest and in equilibrium, at one temperature.</summary>
/// <param name="Temperature">Temperature, K.</param>
/// <param name="Pressure">Absolute pressure, Pa.</param>
/// <param name="Phase">What it holds.</param>
/// <param name="LiquidPart">Part of the bottle's volume that is liquid, 0 to 1.</param>
/// <param name="LiquidDensity">Density of the agent's liquid, kg/m³; NaN without one.</param>
/// <param name="GasDensity">Density of the gas, agent and nitrogen together, kg/m³; NaN without one.</param>
/// <param name="Agent">Mass of agent, kg.</param>
/// <param name="AgentInGas">Of it in the gas, kg.</param>
/// <param name="NitrogenInGas">Nitrogen in the gas, kg.</param>
/// <param name="NitrogenInLiquid">Nitrogen dissolved in the liquid, kg.</param>
/// <param name="NitrogenFraction">Mole fraction of nitrogen in the liquid, 0 to 1.</param>
internal readonly record struct BottleContents(
    double Temperature, double Pressure, BottlePhase Phase, double LiquidPart, double LiquidDensity, double GasDensity,
    double Agent, double AgentInGas, double NitrogenInGas, double NitrogenInLiquid, double NitrogenFraction)
{
    /// <summary>All nitrogen, kg.</summary>
    public double Nitrogen => NitrogenInGas + NitrogenInLiquid;
}
