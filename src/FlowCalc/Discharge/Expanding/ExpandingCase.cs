using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Networks;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Follows a case of a gas or a liquefied gas and writes its numbers with units, in the document's order.</summary>
/// <param name="layout">The layout.</param>
/// <param name="agent">Its agent.</param>
/// <param name="bottle">Its bottle.</param>
/// <param name="line">Its line.</param>
/// <param name="requirement">What the discharge has to do; null for nothing.</param>
/// <param name="depth">How far it is followed.</param>
/// <param name="cancellation">Asked throughout.</param>
internal sealed class ExpandingCase(Layout layout, ExpandingAgent agent, Bottle bottle, CompiledLine line, Requirement? requirement, DischargeDepth depth, CancellationToken cancellation)
{
    // The band is a matter of per cents.
    const double PartOfBand = 0.12;

    readonly double[] wanted = WantedShares.Of(layout);
    readonly int[] order = line.NozzleOrder();
    readonly AskedMasses asked = AskedMasses.Of(bottle, requirement);

    /// <summary>One case.</summary>
    /// <param name="temperature">Temperature of bottle and contents.</param>
    /// <param name="attitude">Attitude.</param>
    /// <param name="place">The bottle in it.</param>
    public DischargeCase Of(Temperature temperature, Attitude attitude, BottlePlace place)
    {
        var answer = new DischargeCase { Temperature = temperature, Attitude = attitude, LiquidPart = double.NaN };
        if (!agent.Covers(temperature.Kelvins))
            return answer with { Failure = new(DischargeFailureKind.OutsideData, "The temperature is outside what is answered for the agent: nothing is extrapolated.") };
        var contents = ExpandingContents.Of(bottle, agent, temperature.Kelvins);
        answer = answer with
        {
            StartPressure = double.IsFinite(contents.Pressure) ? Pressure.FromPascals(contents.Pressure) : null,
            LiquidPart = contents.Phase == BottlePhase.OnePhase ? double.NaN : contents.LiquidPart,
        };
        if (Failure(contents) is { } why) return answer with { Failure = why };
        if (depth == DischargeDepth.AtRest) return answer;

        var isBare = depth != DischargeDepth.Whole;
        var choice = new ExpandingChoice(layout.NozzleModel, layout.NitrogenLag?.Seconds ?? double.PositiveInfinity, 1);
        ExpandingProblem Problem(ExpandingChoice other) => ExpandingSetup.Of(layout, agent, line, place, attitude.Gravity, contents, other, asked.Masses);
        ExpandingProblem Briefly(ExpandingChoice other) => Problem(other) with { IsBrief = true, LargestPart = PartOfBand };
        var problem = depth == DischargeDepth.Brief ? Briefly(choice) : Problem(choice);
        if (depth == DischargeDepth.Bare) problem = problem with { LargestPart = PartOfBand };
        var course = ExpandingRun.Of(problem, cancellation);
        if (course.Failure is { } failure) return answer with { Failure = new(DischargeFailureKind.NotSolved, failure) };
        var nozzles = Nozzles(problem, course);
        return answer with
        {
            Time95 = CaseValues.At(course.Thresholds[asked.Usual]),
            RequiredTime = asked.Required < 0 ? null : CaseValues.At(course.Thresholds[asked.Required]),
            LiquidEnd = CaseValues.At(course.LiquidEnd),
            End = Duration.FromSeconds(course.End),
            Reason = course.Reason,
            PeakMassFlow = MassFlow.FromKilogramsPerSecond(course.PeakNozzleFlow),
            PeakPressure = Pressure.FromPascals(contents.Pressure),
            LeftInBottle = Mass.FromKilograms(course.LeftInBottle),
            LeftInTubes = Mass.FromKilograms(course.LeftInTubes),
            MostInTubes = Mass.FromKilograms(course.PeakInLine),
            ColdestGas = depth == DischargeDepth.Brief ? null : Temperature.FromKelvins(course.Samples.Min(sample => sample.GasTemperature)),
            OutOfReach = problem.VolumeLeft > 0 ? Math.Min(problem.VolumeLeft / (contents.LiquidPart * bottle.Volume.CubicMeters), 1) : 0,
            Nozzles = nozzles,
            Zones = CaseValues.Zones(layout, nozzles, wanted),
            Band = isBare ? null : ExpandingBand.Of(agent, bottle.CushionHeat, course, choice, other => ExpandingRun.Of(Briefly(other), cancellation), order, asked, Tees(problem, contents)),
            QuasiSteady = isBare ? null : ExpandingScales.Of(problem, line.Length, course),
            Series = isBare ? null : SeriesOfCase.Of(course, line.Compiled, order),
            Steps = course.Steps,
            MassDefect = course.MassDefect,
        };
    }

    // At the start, when the flow is the greatest and the agent boils the least.
    ImmutableArray<ShareBand> Tees(ExpandingProblem problem, in BottleContents contents)
    {
        if (contents.Phase == BottlePhase.TwoPhase && problem.VolumeLeft >= contents.LiquidPart * bottle.Volume.CubicMeters) return [];
        var stream = ExpandingContents.Stream(agent, contents, 0.5 * problem.Ambient);
        var drive = Math.Min(contents.Pressure, problem.SetPressure);
        if (ExpansionTable.TryBuild(stream, ExpansionTable.Top(contents.Pressure, problem.Ambient), problem.Ambient, layout.NozzleModel) is not { } table) return [];
        var state = new CompressibleState(problem.Network, problem.Area);
        var report = CompressibleSolver.Solve(state, new TablePath(table), drive, CompressibleSolver.Tight, cancellation);
        return report.Converged ? TeeQuality.Of(layout, new(line.Compiled, state, table) { Stream = () => stream, Model = layout.NozzleModel, Reservoir = drive }) : [];
    }

    DischargeFailure? Failure(in BottleContents contents)
    {
        if (ExpandingDrive.WhyNot(agent, contents) is { } why)
            return new(contents.Phase == BottlePhase.LiquidFull ? DischargeFailureKind.LiquidFull : DischargeFailureKind.OutsideData, why);
        return SupplyDrive.WhyNothingFlows(bottle, contents.Pressure, layout.AmbientPressure.Pascals) is { } none ? new(DischargeFailureKind.NoPressure, none) : null;
    }

    ImmutableArray<NozzleDischarge> Nozzles(ExpandingProblem problem, DischargeCourse course)
    {
        // A gas has no time in which it counts: its pressure falls to the surroundings'.
        var hasLiquid = !double.IsNaN(course.LiquidEnd);
        var nozzles = ImmutableArray.CreateBuilder<NozzleDischarge>(order.Length);
        foreach (var i in order)
        {
            var point = line.Compiled.Points[problem.Network.Nozzles[i]];
            var (least, greatest, peak) = NozzleCourse.Extremes(course, i);
            nozzles.Add(new(
                point, CaseValues.At(course.Arrival[i]), Mass.FromKilograms(course.Delivered[i]), course.Share(i), wanted[point], CaseValues.At(NozzleCourse.TimeOf(course, i, LayoutDischarge.UsualPart)),
                CaseValues.At(course.NozzleLiquidEnd[i]), MassFlow.FromKilogramsPerSecond(peak), hasLiquid ? CaseValues.PressureOf(least) : null, CaseValues.PressureOf(greatest), null));
        }
        return nozzles.MoveToImmutable();
    }
}
