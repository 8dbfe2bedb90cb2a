using FlowCalc.Api.Answers;
using FlowCalc.Api.Checks;
using FlowCalc.Api.CutLists;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Flow;
using FlowCalc.Api.Requests;
using FlowCalc.Checks;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Reports.Sections;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Cli.Jobs;

/// <summary>Jobs whose document is a layout.</summary>
static class LayoutJobs
{
    /// <summary>The flow at one instant.</summary>
    public static Job<Layout> Flow { get; } = new("flow", "The steady flow of a layout: pressure, flow and share at every nozzle, and what is found.", LayoutCall.Reader(new()),
        (Layout layout, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            var solved = SolvedLayout.OfFlow(layout, asked.Units, cancel);
            fault = solved.Judgement is null ? Problems.NoAnswer(solved.Flow.Report.Failure ?? "The solve did not converge.") : null;
            if (solved.Judgement is not { } judged) return null;
            var answer = FlowAnswers.Of(layout, solved.Flow, judged, UnitWriter.Of(asked.Units));
            return new(judged.Verdict, text => FlowAnswerWriter.Write(text, answer), FlowSection.Of(solved, ShownIn(layout, asked)).Blocks, judged.Findings, Cautions.For(layout));
        });

    /// <summary>The discharge through time.</summary>
    public static Job<Layout> Discharge { get; } = new("discharge", "The discharge of a layout through time, in every case of temperature and attitude.", LayoutCall.Reader(new() { NeedsBottle = true }),
        (Layout layout, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            fault = null;
            var result = LayoutDischarge.Solve(layout, TaskScheduler.Default, cancel);
            var judged = DischargeFindings.JudgeWithCures(layout, result, asked.Units, TaskScheduler.Default, cancel);
            var answer = DischargeAnswers.Of(layout, result, judged, UnitWriter.Of(asked.Units));
            return new(judged.Verdict, text => text.Value(answer, AnswerJson.Default.DischargeAnswer), DischargeSection.Of(layout, result, ShownIn(layout, asked)).Blocks, judged.Findings, Cautions.For(layout));
        });

    /// <summary>What is cut and ordered.</summary>
    public static Job<Layout> CutList { get; } = new("cut-list", "What to cut, bend, clip and order to build a layout.", LayoutCall.Reader(new()),
        (Layout layout, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            fault = null;
            var list = Routes.CutList.Of(layout, cancel);
            var judged = CutListFindings.Judge(layout, list, asked.Units, cancel);
            var answer = CutListAnswers.Of(layout, list, judged, UnitWriter.Of(asked.Units));
            return new(judged.Verdict, text => text.Value(answer, AnswerJson.Default.CutListAnswer), CutListSection.Of(layout, list, ShownIn(layout, asked)).Blocks, judged.Findings, Cautions.For(layout));
        });

    /// <summary>Everything that a layout has data for.</summary>
    /// <param name="today">The day for which dates are judged; null for none.</param>
    public static Job<Layout> Check(DateOnly? today) => new("check", "Everything that a layout has data for, under one verdict.", LayoutCall.Reader(new() { Today = today }),
        (Layout layout, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            fault = null;
            var check = LayoutCheck.Of(layout, new(asked.Units, today), TaskScheduler.Default, cancel);
            var answer = CheckAnswers.Of(check, UnitWriter.Of(asked.Units));
            var blocks = CheckBlocks.Of(check).Concat(ReportContent.RestOfTheJob(check, ShownIn(layout, asked)).SelectMany(CheckBlocks.Titled));
            return new(check.Verdict, text => text.Value(answer, AnswerJson.Default.CheckAnswer), blocks, check.AllFindings, check.Cautions);
        });

    static Shown ShownIn(Layout layout, Asked asked) => new(asked.Units, layout.AmbientPressure);
}
