using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Follows a case of a liquid and writes its numbers with units, in the document's order.</summary>
/// <param name="layout">The layout.</param>
/// <param name="agent">Its agent.</param>
/// <param name="bottle">Its bottle.</param>
/// <param name="line">Its line.</param>
/// <param name="requirement">What the discharge has to do; null for nothing.</param>
/// <param name="depth">How far it is followed.</param>
/// <param name="cancellation">Asked throughout.</param>
internal sealed class CaseAnswer(Layout layout, LiquidAgent agent, Bottle bottle, CompiledLine line, Requirement? requirement, DischargeDepth depth, CancellationToken cancellation)
{
    // The band is a matter of per cents.
    const double ToleranceOfBand = 1e-4;

    // A sample of a study lies per cents from the next one.
    const double ToleranceOfSample = 1e-3;

    readonly double[] wanted = WantedShares.Of(layout);
    readonly int[] order = line.NozzleOrder();

    readonly AskedMasses asked = AskedMasses.Of(bottle, requirement);

    /// <summary>One case.</summary>
    /// <param name="temperature">Temperature of bottle and contents.</param>
    /// <param name="attitude">Attitude.</param>
    /// <param name="place">The bottle in it.</param>
    public DischargeCase Of(Temperature temperature, Attitude attitude, BottlePlace place)
    {
        var conditions = CaseConditions.Of(layout, agent, bottle, temperature.Kelvins);
        var answer = new DischargeCase
        {
            Temperature = temperature,
            Attitude = attitude,
            Failure = conditions.Failure,
            StartPressure = CaseValues.PressureOf(conditions.Pressure),
            LiquidPart = conditions.LiquidPart,
        };
        if (conditions.Failure is not null || depth == DischargeDepth.AtRest) return answer;

        var isBare = depth != DischargeDepth.Whole;
        var choice = new ModelChoice(1, layout.Film);
        var problem = CaseSetup.Of(layout, line, place, attitude.Gravity, temperature.Kelvins, conditions, choice, asked.Masses) with { IsBrief = depth == DischargeDepth.Brief };
        if (depth == DischargeDepth.Bare) problem = problem with { Tolerance = ToleranceOfSample, Pair = RungeKuttaPair.BogackiShampine };
        var course = DischargeRun.Of(problem, cancellation);
        if (course.Failure is { } failure) return answer with { Failure = new(DischargeFailureKind.NotSolved, failure) };
        var band = isBare ? null : BandOfCase.Of(course, change => Follow(problem, change, course), choice, bottle.CushionHeat, order, asked.Usual, asked.Required);
        var nozzles = Nozzles(problem, course);
        return answer with
        {
            Time95 = CaseValues.At(course.Thresholds[asked.Usual]),
            RequiredTime = asked.Required < 0 ? null : CaseValues.At(course.Thresholds[asked.Required]),
            LiquidEnd = CaseValues.At(course.LiquidEnd),
            End = Duration.FromSeconds(course.End),
            Reason = course.Reason,
            PeakMassFlow = MassFlow.FromKilogramsPerSecond(course.PeakNozzleFlow),
            PeakPressure = Pressure.FromPascals(conditions.Pressure),
            LeftInBottle = Mass.FromKilograms(course.LeftInBottle),
            LeftInTubes = Mass.FromKilograms(course.LeftInTubes),
            OutOfReach = Math.Min(problem.VolumeLeft / problem.LiquidVolume, 1),
            CushionExponent = double.IsNaN(course.EffectiveExponent) ? null : course.EffectiveExponent,
            Nozzles = nozzles,
            Zones = CaseValues.Zones(layout, nozzles, wanted),
            Band = band,
            QuasiSteady = isBare ? null : TimeScales.Of(problem, line.Length, course),
            Series = isBare ? null : SeriesOfCase.Of(course, line.Compiled, order),
            Steps = course.Steps,
            MassDefect = course.MassDefect,
        };
    }

    // While the line fills, neither the film nor the wall's heat has begun to matter.
    DischargeCourse Follow(DischargeProblem problem, ModelChoice choice, DischargeCourse course)
    {
        var other = problem with
        {
            Film = choice.Film,
            Cushion = problem.Cushion with { Film = problem.Cushion.Film!.Value.Times(choice.WallFactor) },
            Tolerance = ToleranceOfBand,
            IsBrief = true,
        };
        return course.Filled is { } filled ? DischargeRun.From(other, filled, cancellation) : DischargeRun.Of(other, cancellation);
    }

    ImmutableArray<NozzleDischarge> Nozzles(DischargeProblem problem, DischargeCourse course)
    {
        var nozzles = ImmutableArray.CreateBuilder<NozzleDischarge>(order.Length);
        foreach (var i in order)
        {
            var run = problem.Network.Nozzles[i];
            var (least, greatest, peak) = NozzleCourse.Extremes(course, i);
            nozzles.Add(new(
                line.Compiled.Points[run], CaseValues.At(course.Arrival[i]), Mass.FromKilograms(course.Delivered[i]), course.Share(i),
                wanted[line.Compiled.Points[run]], CaseValues.At(NozzleCourse.TimeOf(course, i, LayoutDischarge.UsualPart)), CaseValues.At(course.NozzleLiquidEnd[i]),
                MassFlow.FromKilogramsPerSecond(peak), CaseValues.PressureOf(least), CaseValues.PressureOf(greatest),
                double.IsNaN(course.Arrival[i]) ? null : LineSurge.Of(layout.Runs[line.Compiled.Runs[run]].Tube, problem.Liquid.ReferenceDensity, course.VelocityChange[i])));
        }
        return nozzles.MoveToImmutable();
    }
}
