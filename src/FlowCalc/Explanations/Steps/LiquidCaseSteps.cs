using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Explanations;

/// <summary>A case of a liquid's discharge at its start.</summary>
internal static class LiquidCaseSteps
{
    const string Start = "at the start";

    /// <summary>Writes the case down, after its bottle at rest.</summary>
    /// <param name="log">Where to.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="agent">Its liquid.</param>
    /// <param name="line">Its line.</param>
    /// <param name="place">Its bottle in the attitude.</param>
    /// <param name="one">The case, which has a discharge.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    public static void Add(StepLog log, Layout layout, LiquidAgent agent, CompiledLine line, BottlePlace place, DischargeCase one, CancellationToken cancellationToken)
    {
        var (bottle, temperature) = (((BottleSupply)layout.Supply).Bottle, one.Temperature.Kelvins);
        var conditions = CaseConditions.Of(layout, agent, bottle, temperature);
        var problem = CaseSetup.Of(layout, line, place, one.Attitude.Gravity, temperature, conditions, new ModelChoice(1, layout.Film), []);
        var cushion = problem.BottleVolume - problem.LiquidVolume;
        var uncovered = log.Add(
            BottleEquations.VolumeAtUncovering, "end of the liquid", problem.UncoveringVolume, problem.BottleVolume, problem.VolumeLeft, problem.Volume[0] / problem.Count);
        if (cushion >= uncovered) return;
        var exponent = one.LiquidEnd is null ? null : one.CushionExponent;
        if (exponent is { } n)
            log.Add(BottleEquations.Polytropic, "end of the liquid", conditions.Pressure * Math.Pow(cushion / uncovered, n), conditions.Pressure, cushion, uncovered, n);
        var surface = problem.Level?.HeightOf(problem.LiquidVolume) ?? 0;
        var head = 0.0;
        if (problem.HasHead)
            head = log.Add(
                BottleEquations.Head, Start, problem.Liquid.ReferenceDensity * HydrostaticRise.StandardGravity * problem.Gravity * (surface - problem.InletHeight),
                problem.Liquid.ReferenceDensity, HydrostaticRise.StandardGravity, problem.Gravity, surface, problem.InletHeight);

        var drive = SupplyDrive.Of(layout, agent) with { Reservoir = conditions.Pressure + head };
        var (solved, _) = LiquidFlow.Solve(layout, drive, problem.Liquid, compiled => compiled with { Network = compiled.Network.WithRise(Rise(problem, drive, compiled)) }, cancellationToken);
        if (solved is null) return;
        LiquidSteps.Add(log, layout, solved, cancellationToken);
        log.At(ExplainedPlace.Supply, layout.Points.OfType<SupplyPoint>().Single().Id);
        Rates(log, problem, bottle, solved.State.Flow[0], cushion, surface);
    }

    // A regulator that throttles holds its pressure at the supply point, wherever the inlet is.
    static double[] Rise(DischargeProblem problem, SupplyDrive drive, LayoutNetwork compiled)
    {
        double[] rise = [.. problem.Network.Rise];
        if (compiled.Network.Constant[0] == 0 && drive.SetPressure is not null) rise[0] = 0;
        return rise;
    }

    static void Rates(StepLog log, DischargeProblem problem, Bottle bottle, double flow, double cushion, double surface)
    {
        var gas = problem.Cushion;
        log.Add(BottleEquations.Contents, Start, flow / (problem.Count * bottle.Fill.Kilograms), flow, problem.Count, bottle.Fill.Kilograms);
        var volumeRate = log.Add(BottleEquations.GasRate, Start, flow / (problem.Liquid.ReferenceDensity * problem.Count), flow, problem.Liquid.ReferenceDensity, problem.Count);
        var densityRate = log.Add(BottleEquations.GasDensityRate, Start, -gas.Density * volumeRate / cushion, gas.Density, volumeRate, cushion);
        if (gas.Process == CushionProcess.Isothermal) return;
        var point = gas.At(gas.Temperature, gas.Density);
        var state = new CushionState(
            gas.Temperature, gas.Density, gas.Density * cushion, gas.Temperature,
            problem.Level?.WallAreaAbove(surface) ?? problem.WallArea, problem.Level?.SurfaceArea(surface) ?? 0);
        log.Add(
            BottleEquations.GasTemperatureRate, Start, gas.Rates(state, point, densityRate, out _),
            gas.Temperature, point.PressurePerKelvin, gas.Density, point.HeatCapacity, densityRate);
    }
}
