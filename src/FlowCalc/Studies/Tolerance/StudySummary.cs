using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Studies.Sampling;
using UnitsNet;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Sums the samples of a study up.</summary>
internal static class StudySummary
{
    /// <summary>The answer to a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="model">What was worked out of every sample.</param>
    /// <param name="samples">The samples.</param>
    /// <param name="hypercube">Where they lie.</param>
    /// <param name="scheduler">Where columns are summed up beside the caller's thread.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    public static ToleranceResult Of(
        ToleranceQuestion question, StudyModel model, SampleRun samples, LatinHypercube hypercube, TaskScheduler scheduler, CancellationToken cancellationToken)
    {
        var options = new ParallelOptions { TaskScheduler = scheduler, CancellationToken = cancellationToken };
        var summaries = new SampleSummary[samples.Columns.Length];
        Parallel.For(0, summaries.Length, options, column => summaries[column] = SampleSummary.Of(samples.Design[column], samples.Columns[column]));
        var sensitivities = Sensitivities.Of(question, model, samples, hypercube, options);
        var all = question.Samples;
        return new(
            Cases(question, model, samples, summaries),
            [.. Enum.GetValues<Severity>().Select(severity => (severity, Chance.Of(samples.Verdicts[(int)severity], all)))],
            Chance.Of(samples.Unsolved, all),
            [.. samples.Findings
                .OrderByDescending(found => found.Key.Severity).ThenByDescending(found => found.Value)
                .ThenBy(found => found.Key.Code, StringComparer.Ordinal).ThenBy(found => found.Key.Where, StringComparer.Ordinal)
                .Select(found => new FindingChance(found.Key.Code, found.Key.Severity, found.Key.Where, Chance.Of(found.Value, all)))],
            sensitivities,
            [.. question.Layout.Assumptions.Select(assumption => assumption with { Pointer = "/layout" + assumption.Pointer }), .. question.Assumptions]);
    }

    static ImmutableArray<CaseSpread> Cases(ToleranceQuestion question, StudyModel model, SampleRun samples, SampleSummary[] summaries)
    {
        var layout = question.Layout;
        var wanted = WantedShares.Of(layout);
        var zones = ZoneShare.Of(layout, new double[layout.Points.Length], wanted);
        var cases = ImmutableArray.CreateBuilder<CaseSpread>(model.Cases.Length);
        var next = 0;
        for (var at = 0; at < model.Cases.Length; at++)
        {
            var figures = Take(model.CaseFigures);
            ImmutableArray<PlaceSpread> nozzles = [.. model.Nozzles.Select(point => new PlaceSpread(layout.Points[point].Id, wanted[point], Take(model.NozzleFigures)))];
            ImmutableArray<PlaceSpread> ofZones = [.. zones.Select(zone => new PlaceSpread(zone.Zone, zone.WantedShare, Take(StudyModel.ZoneFigures)))];
            var failures = samples.Failures[at].OrderByDescending(failure => failure.Value).ThenBy(failure => failure.Key, StringComparer.Ordinal).Select(failure => (failure.Key, failure.Value));
            cases.Add(new(Temperature.FromKelvins(model.Cases[at].Temperature), model.Cases[at].Attitude, [.. failures], figures, nozzles, ofZones));
        }
        return cases.MoveToImmutable();

        ImmutableArray<FigureSpread> Take(ImmutableArray<Figure> these) => [.. these.Select(figure => new FigureSpread(figure, summaries[next++]))];
    }
}
