using System.Globalization;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Compare;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Size;
using FlowCalc.Api.Tolerance;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Studies.Comparing;
using FlowCalc.Studies.Reading;
using FlowCalc.Studies.Sizing;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Cli.Jobs;

/// <summary>Jobs whose document is a request of a study: a layout among other things.</summary>
static class StudyJobs
{
    const int MostPoints = 10_000, MostVariants = 1_000, MostStock = 60, UsualWork = 150_000;

    static readonly ToleranceLimits Samples = new(1_000_000, 1_000_000, 100_000_000);

    /// <summary>Layouts side by side.</summary>
    public static Job<CompareRequest> Compare { get; } = new("compare", "A layout and variants of it, side by side, and which is best.",
        (utf8, cancel) => CompareReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = MostPoints }, MostVariants, cancel),
        (CompareRequest request, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            fault = null;
            var result = Comparison.Of(request, asked.Units, TaskScheduler.Default, cancel);
            var answer = CompareAnswers.Of(result, UnitWriter.Of(asked.Units));
            var first = result.Results[result.Ranking[0].Result];
            return new(Worst(first), text => text.Value(answer, AnswerJson.Default.CompareAnswer), Blocks(result, asked), [], Cautions.For(first.Variant.Layout));
        });

    /// <summary>Bores and orifices.</summary>
    public static Job<SizeRequest> Size { get; } = new("size", "Bores and orifices from a stock that meet a wish.",
        (utf8, cancel) => SizeReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = MostPoints }, MostStock, UsualWork, cancel),
        (SizeRequest request, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            var result = LayoutSizing.Solve(request.Problem, TaskScheduler.Default, cancel);
            fault = result.Failure is { } failure ? Problems.NoAnswer(failure) : null;
            if (fault is not null) return null;
            var answer = SizeAnswers.Of(request, result, UnitWriter.Of(asked.Units), explains: false, cancel);
            return new(result.IsPossible ? Severity.Pass : Severity.Fail, text => text.Value(answer, AnswerJson.Default.SizeAnswer), Blocks(request, result, cancel), [], Cautions.For(request.Problem.Layout));
        });

    /// <summary>Spread of an answer.</summary>
    public static Job<ToleranceQuestion> Tolerance { get; } = new("tolerance", "How the spread of what is built spreads the answer, and which input matters most.",
        (utf8, cancel) => ToleranceReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = MostPoints }, Samples, cancel),
        (ToleranceQuestion question, Asked asked, out Problem? fault, CancellationToken cancel) =>
        {
            fault = null;
            var result = ToleranceStudy.Run(question, TaskScheduler.Default, asked.Progress, cancel);
            var answer = ToleranceAnswers.Of(question, result, UnitWriter.Of(asked.Units));
            var worst = result.Verdicts.Where(verdict => verdict.Chance.Count > 0).Select(verdict => verdict.Severity).DefaultIfEmpty(Severity.Fail).Max();
            return new(worst, text => text.Value(answer, AnswerJson.Default.ToleranceAnswer), Blocks(result), [], answer.Cautions);
        });

    static Severity Worst(VariantResult one) => one.FlowJudgement is { } flow ? (Severity)Math.Max((int)flow.Verdict, (int)(one.DischargeJudgement?.Verdict ?? Severity.Pass)) : Severity.Fail;

    static IEnumerable<ReportBlock> Blocks(ComparisonResult result, Asked asked)
    {
        yield return ReportTable.Of("Ranking, best first", ["#place", "layout", "verdict", "why there"], result.Ranking.Select((rank, at) => (string[])
            [(at + 1).ToString(CultureInfo.InvariantCulture), result.Results[rank.Result].Variant.Name, Severities.Word(Worst(result.Results[rank.Result])), rank.Reason]));
        yield return ReportTable.Of("Flow of each nozzle, and its deviation from the wanted share", ["nozzle", .. result.Results.Select(one => "#" + one.Variant.Name)], result.Nozzles.Select(nozzle => (string[])
            [nozzle.Id, .. nozzle.Places.Select((place, at) => place is null ? Shown.None : $"{new Shown(asked.Units, result.Results[at].Variant.Layout.AmbientPressure).Of(place.Flow.VolumeFlow)} {Shown.Deviation(place.Flow.Deviation)}")]));
    }

    static IEnumerable<ReportBlock> Blocks(SizeRequest request, SizingResult result, CancellationToken cancel)
    {
        yield return new ReportParagraph($"{result.Solves} of {Shown.Number(result.Choices)} choices were solved{(result.Discharges > 0 ? $", {result.Discharges} discharges followed" : "")}. "
            + (result.IsProven ? "The answer is proven: none is better." : "The search ended before it could prove its answer."));
        if (result.Best is not { } best)
        {
            yield return new ReportParagraph("Nothing in that stock meets the wish.");
            yield return new ReportList([.. result.Relaxations.Select(relaxation =>
                $"Without the wish for {relaxation.Requirement.ToString().ToLowerInvariant()}: {(relaxation.Choice is { } choice ? $"possible, the worst nozzle then {Shown.Percent(choice.Worst)} off" : "still nothing")}.")]);
            yield break;
        }
        var sized = SizedDocument.Of(request, best, cancel);
        yield return ReportTable.Of($"Changes; the worst nozzle is then {Shown.Percent(best.Worst)} off its wanted share", ["what", "from", "to"], sized.Changes.Select(change => (string[])
            [change.Path, change.From?.ToString() ?? "nothing", change.To?.ToString() ?? "nothing"]));
    }

    static IEnumerable<ReportBlock> Blocks(ToleranceResult result)
    {
        yield return ReportTable.Of("Verdicts of the samples", ["verdict", "#part of them"], result.Verdicts.Select(verdict => (string[])[Severities.Word(verdict.Severity), Shown.Percent(verdict.Chance.Part)]));
        foreach (var one in result.Cases)
            yield return ReportTable.Of("Deviation of each nozzle from its wanted share", ["nozzle", "#as drawn", "#5 % below", "#half", "#5 % above"], one.Nozzles.SelectMany(nozzle => nozzle.Figures
                .Where(figure => figure.Figure == Figure.Deviation)
                .Select(figure => (string[])[nozzle.Id, Shown.Deviation(figure.Summary.Design), Shown.Deviation(figure.Summary.P05), Shown.Deviation(figure.Summary.P50), Shown.Deviation(figure.Summary.P95)])));
        yield return ReportTable.Of("Findings, the gravest first", ["severity", "code", "where", "#chance", "#from", "#to"], result.Findings.Select(finding => (string[])
            [Severities.Word(finding.Severity), finding.Code, $"{finding.Where}", Shown.Percent(finding.Chance.Part), Shown.Percent(finding.Chance.Low), Shown.Percent(finding.Chance.High)]));
    }
}
