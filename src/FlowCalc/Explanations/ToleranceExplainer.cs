using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Explanations;

/// <summary>Explains a study of tolerances: the flow of the design, the percentiles, the chances, and what the inputs explain.</summary>
public static class ToleranceExplainer
{
    /// <summary>Name of the layout as it is in an explanation.</summary>
    public const string Design = "design";

    static readonly string[] LeftOut =
    [
        "The samples: place i of an input is where a Latin hypercube (M. D. McKay, R. J. Beckman, W. J. Conover, Technometrics 21 (1979) 239–245) puts it by seed and index; the same request gives the same ones. Each of them is an answer that a request of its own explains.",
        "Means, standard deviations and sums of squares: they are over all samples; the deviation is that of N - 1.",
        "Percentiles that an instant which never comes leaves open.",
        "The discharge of the design: POST /v1/discharge?explain=true explains it. The flow shown is the steady one at the layout's temperature.",
    ];

    /// <summary>How many points there are to explain: those of the layout in every case.</summary>
    /// <param name="question">The question.</param>
    public static long Points(ToleranceQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return question.Answer == StudiedAnswer.Flow || !question.IsEveryCase ? question.Layout.Points.Length : DischargeExplainer.Points(question.Layout);
    }

    /// <summary>The explanation of a study.</summary>
    /// <param name="question">What was asked.</param>
    /// <param name="result">What came of it.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static StudyExplanation Of(ToleranceQuestion question, ToleranceResult result, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(result);
        var study = new StudyExplainer();
        study.Add(Design, question.Layout, SteadyFlow.Solve(question.Layout, cancellationToken), cancellationToken);
        for (var at = 0; at < result.Cases.Length; at++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            var one = result.Cases[at];
            study.Log.At(ExplainedPlace.Layout, Design);
            Percentiles(study.Log, $"case {at}", one.Figures);
            foreach (var nozzle in one.Nozzles)
            {
                study.Log.At(ExplainedPlace.Point, nozzle.Id);
                Percentiles(study.Log, $"case {at}", nozzle.Figures);
            }
            foreach (var zone in one.Zones)
            {
                study.Log.At(ExplainedPlace.Zone, zone.Id);
                Percentiles(study.Log, $"case {at}", zone.Figures);
            }
        }
        Chances(study.Log, question, result);
        foreach (var sensitivity in result.Sensitivities)
        {
            cancellationToken.ThrowIfCancellationRequested();
            Indices(study.Log, sensitivity);
        }
        return study.Whole(LeftOut);
    }

    static void Percentiles(StepLog log, string name, ImmutableArray<FigureSpread> figures)
    {
        foreach (var (figure, summary) in figures)
        {
            log.FigureUnit = FigureUnits.KindOf(figure) is { } kind ? SymbolUnit.Of(kind) : SymbolUnit.Plain;
            foreach (var (at, told) in ((PercentileRank?, double?)[])[(summary.Rank05, summary.P05), (summary.Rank50, summary.P50), (summary.Rank95, summary.P95)])
            {
                if (at is not { } rank || told is not { } percentile || !double.IsFinite(rank.Above)) continue;
                var part = FormattableString.Invariant($"{name}, {SpreadWords.Of(figure)}: {100 * rank.Part:0} %");
                log.Add(ToleranceEquations.PercentileRank, part, rank.Rank, summary.Count, rank.Part);
                log.Add(ToleranceEquations.Percentile, part, percentile, rank.Below, rank.Rank, Math.Floor(rank.Rank), rank.Above);
            }
        }
    }

    static void Chances(StepLog log, ToleranceQuestion question, ToleranceResult result)
    {
        foreach (var (severity, chance) in result.Verdicts) OfOne(log, "verdict", Lower(severity), chance, question.Samples);
        OfOne(log, "verdict", "unsolved", result.Unsolved, question.Samples);
        foreach (var found in result.Findings)
            OfOne(log, found.Code, found.Where.Length > 0 ? $"{Lower(found.Severity)}: {found.Where}" : Lower(found.Severity), found.Chance, question.Samples);
    }

    static void OfOne(StepLog log, string what, string part, Chance chance, int samples)
    {
        log.At(ExplainedPlace.Finding, what);
        var of = log.Add(ToleranceEquations.ChancePart, part, chance.Part, chance.Count, samples);
        if (chance.Count > 0) log.Add(ToleranceEquations.ChanceLow, part, chance.Low, of, Chance.Score, samples);
        log.Add(ToleranceEquations.ChanceHigh, part, chance.High, of, Chance.Score, samples);
    }

    static void Indices(StepLog log, FigureSensitivity sensitivity)
    {
        var part = $"case {sensitivity.Case}, {SpreadWords.Of(sensitivity.Figure)}";
        foreach (var (path, index) in sensitivity.Inputs)
        {
            log.At(ExplainedPlace.Input, path);
            var parts = index.Parts;
            var within = log.Add(ToleranceEquations.WithinBins, part, parts.Within, parts.Whole, parts.Between, parts.Samples, parts.Bins);
            log.Add(ToleranceEquations.Index, part, index.Value, parts.Between, parts.Bins, within, parts.Whole);
            log.Add(ToleranceEquations.IndexError, part, index.StandardError, FirstOrderIndex.Groups, parts.Differences);
        }
    }

    static string Lower(Severity severity) => severity.ToString().ToLowerInvariant();
}
