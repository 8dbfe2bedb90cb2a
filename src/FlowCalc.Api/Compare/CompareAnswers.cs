using FlowCalc.Api.Answers;
using FlowCalc.Api.Discharge;
using FlowCalc.Api.Flow;
using FlowCalc.Findings;
using FlowCalc.Studies.Comparing;

namespace FlowCalc.Api.Compare;

/// <summary>Writes a comparison of the engine as an answer.</summary>
internal static class CompareAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static CompareAnswer Of(ComparisonResult result, UnitWriter write) => new(
        NameOf(result, result.Ranking[0].Result),
        [.. result.Ranking.Select((ranked, place) => new RankAnswer(place + 1, NameOf(result, ranked.Result), Word(ranked.By), ranked.Reason))],
        [.. result.Nozzles.Select(nozzle => ComparedNozzles.Of(result, nozzle, write))],
        [.. result.Results.Select(one => Variant(one, write))],
        [.. result.Results.SelectMany(one => Cautions.For(one.Variant.Layout)).Distinct()],
        Engine.Answer);

    static VariantAnswer Variant(VariantResult one, UnitWriter write)
    {
        var (layout, standing) = (one.Variant.Layout, one.Standing);
        return new(
            one.Variant.Name,
            [.. one.Variant.Changes.Select(change => new ChangeAnswer(change.Path, change.Value))],
            SeverityWord.Of(standing.Verdict),
            standing.Fails,
            standing.Warns,
            standing.WorstNozzle >= 0 ? layout.Points[standing.WorstNozzle].Id : null,
            UnitWriter.Plain(standing.WorstDeviation),
            write.Of(standing.SlowestTime),
            one.Failure,
            one.FlowJudgement is { } judged ? FlowAnswers.Of(layout, one.Flow, judged, write) : null,
            one is { Discharge: { } discharge, DischargeJudgement: { } found } ? WithoutSeries(DischargeAnswers.Of(layout, discharge, found, write)) : null);
    }

    // The series of every case of every variant is most of an answer's length and none of a comparison's point.
    static DischargeAnswer WithoutSeries(DischargeAnswer answer) => answer with { Cases = [.. answer.Cases.Select(one => one with { Series = null })] };

    static string NameOf(ComparisonResult result, int at) => result.Results[at].Variant.Name;

    static string Word(StandingReason by) => by switch
    {
        StandingReason.NoFlow => "no-flow",
        StandingReason.Verdict => "verdict",
        StandingReason.Fails => "fails",
        StandingReason.Warns => "warns",
        StandingReason.Deviation => "deviation",
        StandingReason.Time => "time",
        StandingReason.Order => "order",
        _ => throw new ArgumentOutOfRangeException(nameof(by), by, "Not a reason."),
    };
}
