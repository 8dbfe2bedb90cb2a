using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Discharge;

/// <summary>Liquid and cushion at the start of a case, or why there is nothing to start from.</summary>
/// <param name="Density">Of the liquid, kg/m³; NaN where it is not known.</param>
/// <param name="Viscosity">Of the liquid, Pa·s.</param>
/// <param name="LiquidPart">Part of the bottle that the liquid fills, 0 to 1 and over.</param>
/// <param name="Pressure">Absolute pressure in the bottle, Pa; NaN where it is not known.</param>
/// <param name="CushionDensity">Of the cushion, kg/m³.</param>
/// <param name="Failure">Why the case has no discharge; null where it has one.</param>
internal readonly record struct CaseConditions(
    double Density, double Viscosity, double LiquidPart, double Pressure, double CushionDensity, DischargeFailure? Failure)
{
    /// <summary>The conditions of a layout's bottle.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="agent">Its liquid.</param>
    /// <param name="bottle">Its bottle.</param>
    /// <param name="temperature">Temperature of bottle and contents, K.</param>
    public static CaseConditions Of(Layout layout, LiquidAgent agent, Bottle bottle, double temperature)
    {
        if (agent.FreezingPoint is { } freezing && temperature < freezing)
            return Without(DischargeFailureKind.BelowFreezing, "The agent is below its freezing point: it is ice, or turning to ice, and does not flow.");
        if (!agent.Covers(temperature))
            return Without(DischargeFailureKind.OutsideData, "The temperature is outside the data of the agent: nothing is extrapolated.");
        var (density, vapour) = (agent.Density(temperature), agent.VapourPressure(temperature));
        var part = BottlePressure.LiquidPart(bottle, agent, temperature);
        var known = new CaseConditions(density, agent.Viscosity(temperature), part, double.NaN, double.NaN, null);
        if (vapour >= layout.AmbientPressure.Pascals)
            return known.Failed(DischargeFailureKind.Boiling, "The liquid boils at the surroundings' pressure: flow with vapour in it is not answered for this agent.");
        if (part >= 1)
            return known.Failed(DischargeFailureKind.LiquidFull, "The liquid alone fills the bottle: no cushion is left to drive it, and its pressure is not known.");
        // The little vapour beside the gas is counted as gas: it expands with it.
        var gasDensity = BottlePressure.TryAt(bottle, agent, temperature, out var pressure) ? GasDensity.Of(CushionGases.Of(bottle.CushionGas).Gas, temperature, pressure) : double.NaN;
        if (double.IsNaN(gasDensity))
            return known.Failed(DischargeFailureKind.OutsideData, "The cushion has no state within the data of its gas.");
        known = known with { Pressure = pressure, CushionDensity = gasDensity };
        return SupplyDrive.WhyNothingFlows(bottle, pressure, layout.AmbientPressure.Pascals) is { } why ? known.Failed(DischargeFailureKind.NoPressure, why) : known;
    }

    CaseConditions Failed(DischargeFailureKind kind, string message) => this with { Failure = new(kind, message) };

    static CaseConditions Without(DischargeFailureKind kind, string message) =>
        new(double.NaN, double.NaN, double.NaN, double.NaN, double.NaN, new(kind, message));
}
