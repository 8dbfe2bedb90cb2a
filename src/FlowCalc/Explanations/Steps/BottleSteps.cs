using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>A bottle at rest before its valve opens.</summary>
internal static class BottleSteps
{
    const string Charge = "when charged", Now = "at the temperature asked", Nitrogen = "nitrogen";

    /// <summary>Writes the bottle of a layout down, if its supply is one and its contents have a state.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="temperature">Temperature of bottle and contents, K.</param>
    public static void Add(StepLog log, Layout layout, double temperature)
    {
        if (layout.Supply is not BottleSupply { Bottle: var bottle }) return;
        log.At(ExplainedPlace.Supply, layout.Points.OfType<SupplyPoint>().Single().Id);
        if (layout.Agent is LiquidAgent liquid) Liquid(log, bottle, liquid, temperature);
        else Expanding(log, bottle, (ExpandingAgent)layout.Agent, temperature);
    }

    static void Liquid(StepLog log, Bottle bottle, LiquidAgent agent, double temperature)
    {
        var charge = bottle.ChargeTemperature.Kelvins;
        var gas = CushionGases.Of(bottle.CushionGas).Gas;
        var dry = bottle.ChargePressure.Pascals - agent.VapourPressure(charge);
        var charged = Cushion(log, bottle, agent, Charge, charge);
        var density = Gas(log, Charge, gas, GasDensity.Of(gas, charge, dry), charge);
        var volume = Cushion(log, bottle, agent, Now, temperature);
        var warmed = log.Add(BottleEquations.CushionDensity, Now, density * (charged / volume), density, charged, volume);
        Gas(log, Now, gas, warmed, temperature);
        if (BottlePressure.TryAt(bottle, agent, temperature, out var pressure))
            log.Add(BottleEquations.BottlePressure, Now, pressure, gas.At(temperature, warmed).Pressure, agent.VapourPressure(temperature));
    }

    static double Cushion(StepLog log, Bottle bottle, LiquidAgent agent, string when, double temperature)
    {
        var (volume, mass, density) = (bottle.Volume.CubicMeters, bottle.Fill.Kilograms, agent.Density(temperature));
        return log.Add(BottleEquations.CushionVolume, when, volume - mass / density, volume, mass, density);
    }

    static double Gas(StepLog log, string when, RealGas gas, double density, double temperature)
    {
        var pressure = gas.At(temperature, density).Pressure;
        log.Add(BottleEquations.GasPressure, when, pressure, pressure / (density * gas.GasConstant * temperature), density, gas.GasConstant, temperature);
        return density;
    }

    static void Expanding(StepLog log, Bottle bottle, ExpandingAgent agent, double temperature)
    {
        var contents = ExpandingContents.Of(bottle, agent, temperature);
        var volume = bottle.Volume.CubicMeters;
        if (!double.IsFinite(contents.Pressure)) return;
        if (contents.Phase != BottlePhase.TwoPhase) log.Add(BottleEquations.RestDensity, Now, contents.Agent / volume, contents.Agent, volume);
        else
        {
            var perMass = agent.Solubility is { } solubility ? solubility.MolarVolume / Fluid.Of(Nitrogen).MolarMass : 0;
            var part = log.Add(
                BottleEquations.LiquidPart, Now, contents.LiquidPart, contents.Agent, contents.AgentInGas, contents.LiquidDensity, contents.NitrogenInLiquid, perMass, volume);
            log.Add(BottleEquations.GasOverLiquid, Now, contents.GasDensity, contents.AgentInGas, contents.NitrogenInGas, part, volume);
        }
        if (agent.Solubility is null && double.IsFinite(contents.GasDensity)) Gas(log, Now, agent.Fluid, contents.Pressure, contents.GasDensity, temperature);
        if (agent.Solubility is not null && contents.Phase == BottlePhase.TwoPhase) UnderNitrogen(log, agent.Fluid, contents, volume);
    }

    static void UnderNitrogen(StepLog log, Fluid agent, in BottleContents contents, double volume)
    {
        var (temperature, pressure) = (contents.Temperature, contents.Pressure);
        var saturated = agent.ExactSaturation(temperature).Pressure;
        var raised = saturated * Math.Exp(agent.MolarMass / contents.LiquidDensity * (pressure - saturated) / (NitrogenEquilibrium.MolarGasConstant * temperature));
        var own = log.Add(
            BottleEquations.AgentPressure, Now, (1 - contents.NitrogenFraction) * raised, contents.NitrogenFraction, saturated, agent.MolarMass, contents.LiquidDensity, pressure, temperature);
        var nitrogen = Gas(log, Now, Fluid.Of(Nitrogen), pressure - own, contents.NitrogenInGas / ((1 - contents.LiquidPart) * volume), temperature);
        log.Add(BottleEquations.BottlePressure, Now, pressure, nitrogen, own);
    }

    static double Gas(StepLog log, string when, Fluid fluid, double pressure, double density, double temperature) =>
        log.Add(BottleEquations.GasPressure, when, pressure, pressure / (density * fluid.GasConstant * temperature), density, fluid.GasConstant, temperature);
}
