using FlowCalc.Calibration;
using FlowCalc.Circuits;
using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Mounts;
using FlowCalc.Routes;
using FlowCalc.Upkeep;

namespace FlowCalc.Checks;

/// <summary>Works out the parts of one layout's job, each for itself.</summary>
readonly struct PartWork(Layout layout, CheckAsk ask, TaskScheduler scheduler, CancellationToken cancel)
{
    public (Answered<FlowResult, FlowJudgement>?, PartAnswer) Flow()
    {
        var flow = SteadyFlow.Solve(layout, cancel);
        if (!flow.Report.Converged) return (null, PartAnswer.Failed(JobPart.Flow, flow.Report.Failure ?? "The solve did not converge."));
        var judged = FlowFindings.Judge(layout, flow, ask.Units, cancel);
        return (new(flow, judged), PartAnswer.Of(JobPart.Flow, judged.Verdict, judged.Findings, flow.Assumptions));
    }

    public (Answered<DischargeResult, DischargeJudgement>?, PartAnswer) Discharge()
    {
        if (layout.Supply is not BottleSupply) return (null, PartAnswer.NotAsked(JobPart.Discharge, "The supply is held at a pressure, not a bottle: there is no discharge to follow."));
        var discharge = LayoutDischarge.Solve(layout, scheduler, cancel);
        var judged = DischargeFindings.JudgeWithCures(layout, discharge, ask.Units, scheduler, cancel);
        return (new(discharge, judged), PartAnswer.Of(JobPart.Discharge, judged.Verdict, judged.Findings, discharge.Assumptions));
    }

    public (Answered<CutList, CutListJudgement>, PartAnswer) CutList()
    {
        var cuts = Routes.CutList.Of(layout, cancel);
        var judged = CutListFindings.Judge(layout, cuts, ask.Units, cancel);
        return (new(cuts, judged), PartAnswer.Of(JobPart.CutList, judged.Verdict, judged.Findings, judged.Assumptions));
    }

    public (Answered<MountResult, MountJudgement>?, PartAnswer) Mount()
    {
        if (layout.Mount is null) return (null, PartAnswer.NotAsked(JobPart.Mount, "The document has no mount: what holds the bottle, its bolts, straps and loads."));
        var mount = LayoutMount.Solve(layout, cancel);
        var judged = MountFindings.JudgeWithCures(layout, mount, ask.Units, cancel);
        return (new(mount, judged), PartAnswer.Of(JobPart.Mount, judged.Verdict, judged.Findings, judged.Assumptions));
    }

    public (Answered<CircuitResult, CircuitJudgement>?, PartAnswer) Circuit()
    {
        if (layout.Circuit is not { } drawn) return (null, PartAnswer.NotAsked(JobPart.Circuit, "The document has no circuit: what fires the system, its source and its parts between named nodes."));
        var circuit = CircuitAnalysis.Of(drawn, cancel);
        if (!circuit.IsFinite)
            return (null, PartAnswer.Failed(JobPart.Circuit, "The current of the source came out as a number that is not finite; the circuit's resistances may be too far apart."));
        var judged = CircuitFindings.Judge(layout, circuit, ask.Units, cancel);
        return (new(circuit, judged), PartAnswer.Of(JobPart.Circuit, judged.Verdict, judged.Findings, drawn.Assumptions));
    }

    public (Answered<CoverageResult, CoverageJudgement>?, PartAnswer) Coverage(FlowResult? flow, DischargeResult? discharge)
    {
        if (layout.Coverage is null && layout.Zones.IsEmpty) return (null, PartAnswer.NotAsked(JobPart.Coverage, "The document has neither zones nor coverage: surfaces, targets, persons and bodies, and what the zones hold."));
        // Masses and mean flows of the discharge tell more than one instant of the flow.
        var instant = discharge is null ? flow : null;
        var coverage = LayoutCoverage.Solve(layout, discharge, instant, cancel);
        var judged = CoverageFindings.JudgeWithCures(layout, coverage, discharge, instant, ask.Units, scheduler, cancel);
        return (new(coverage, judged), PartAnswer.Of(JobPart.Coverage, judged.Verdict, judged.Findings, judged.Assumptions));
    }

    public (Answered<CalibrationResult, CalibrationJudgement>?, PartAnswer) Calibration()
    {
        if (layout.Measured is not { } measured) return (null, PartAnswer.NotAsked(JobPart.Calibration, "The document has no measured: what a test of the built system showed."));
        var calibration = LayoutCalibration.Of(layout, cancel);
        if (calibration.Failure is { } failure) return (null, PartAnswer.Failed(JobPart.Calibration, failure));
        var judged = CalibrationFindings.Judge(layout, calibration, ask.Units, cancel);
        return (new(calibration, judged), PartAnswer.Of(JobPart.Calibration, judged.Verdict, judged.Findings, measured.Assumptions));
    }

    public (Answered<UpkeepResult, UpkeepJudgement>?, PartAnswer) Upkeep()
    {
        if (layout.Service is null) return (null, PartAnswer.NotAsked(JobPart.Upkeep, "The document has no service: the bottle's dates, rules, weighing and gauge."));
        if (ask.Today is not { } today) return (null, PartAnswer.NotAsked(JobPart.Upkeep, "No day is given for which dates are to be judged, and no clock is asked."));
        var upkeep = UpkeepCalculation.Of(layout, today, ask.GaugeTemperature);
        var judged = UpkeepFindings.Judge(layout, upkeep, ask.Units);
        return (new(upkeep, judged), PartAnswer.Of(JobPart.Upkeep, judged.Verdict, judged.Findings, upkeep.Assumptions));
    }
}
