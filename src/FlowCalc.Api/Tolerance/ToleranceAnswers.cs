using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Quantities;
using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Api.Tolerance;

/// <summary>Writes a study of tolerances as an answer.</summary>
internal static class ToleranceAnswers
{
    static readonly ImmutableArray<string> Method =
    [
        "Samples: a Latin hypercube (McKay, Beckman, Conover 1979) with strata paired at random, drawn by a counter-based generator, so that the same seed gives the same answer on every machine. A normal is cut four standard deviations off and drawn in proportion between the cuts. Inputs are independent of each other.",
        "Chances: the part of the samples, with the interval of Wilson (1927) for a confidence of 95 %. It knows of the inputs' spread only, not of what the model itself leaves open, for which see the band of the call itself. Findings that hang on nothing that varies come to 0 or 1.",
        "Sensitivities: first-order indices from the same samples by bins of equal chance, with the differences that chance alone makes taken off (given data); standard errors by the jackknife over 20 groups. What they leave of 1 is due to inputs together, or below what so many samples tell apart.",
        "A discharge is followed less exactly than by the call itself: times of a liquid within about a thousandth of those of the call itself, of other agents within about a hundredth; without the band, so that findings which only the band gives are not counted.",
    ];

    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static ToleranceAnswer Of(ToleranceQuestion question, ToleranceResult result, UnitWriter write) => new(
        question.Answer == StudiedAnswer.Flow ? "flow" : "discharge",
        question.Samples,
        (long)question.Seed,
        result.Sensitivities[0].Statement,
        [.. question.Variables.Select(variable => Input(variable, write))],
        Verdicts(result),
        [.. result.Findings.Select(found => new FindingChanceAnswer(found.Code, SeverityWord.Of(found.Severity), found.Where.Length > 0 ? found.Where : null, Chance(found.Chance)))],
        [.. result.Cases.Select(one => Case(one, write))],
        [.. result.Sensitivities.Select(Sensitivity)],
        Method,
        result.Assumptions,
        Cautions.For(question.Layout),
        Engine.Answer);

    static InputAnswer Input(SpreadVariable variable, UnitWriter write)
    {
        var (thing, values) = (variable.Thing, variable.Values);
        return new(thing.Path, SpreadWords.Of(thing.Kind), Value(thing.Design), SpreadWords.Of(values.Shape), Value(values.Low), Value(values.High), variable.Source);

        Quantity Value(double si) => write.Of(si - thing.Base, thing.Quantity);
    }

    static VerdictsAnswer Verdicts(ToleranceResult result)
    {
        var by = result.Verdicts.ToDictionary(verdict => verdict.Severity, verdict => Chance(verdict.Chance));
        return new(by[Severity.Pass], by[Severity.Note], by[Severity.Warn], by[Severity.Fail], Chance(result.Unsolved));
    }

    static ChanceAnswer Chance(Chance chance) => new(chance.Count, UnitWriter.Plain(chance.Part), UnitWriter.Plain(chance.Low), UnitWriter.Plain(chance.High));

    static CaseSpreadAnswer Case(CaseSpread one, UnitWriter write) => new(
        write.Of(one.Temperature.Kelvins, QuantityKind.Temperature),
        one.Attitude?.Name,
        one.Failed,
        [.. one.Failures.Select(failure => new FailureCountAnswer(failure.Reason, failure.Samples))],
        Figures(one.Figures, write),
        [.. one.Nozzles.Select(nozzle => Place(nozzle, write))],
        [.. one.Zones.Select(zone => Place(zone, write))]);

    static PlaceSpreadAnswer Place(PlaceSpread place, UnitWriter write) => new(place.Id, UnitWriter.Plain(place.WantedShare), Figures(place.Figures, write));

    static ImmutableArray<FigureAnswer> Figures(ImmutableArray<FigureSpread> figures, UnitWriter write) => [.. figures.Select(figure => Spread(figure, write))];

    static FigureAnswer Spread(FigureSpread spread, UnitWriter write)
    {
        var (kind, summary) = (FigureUnits.KindOf(spread.Figure), spread.Summary);
        return new(
            SpreadWords.Of(spread.Figure), kind is { } known ? write.Of(0, known).Unit : "1", Told(summary.Design), summary.Count, summary.Never,
            Told(summary.Mean), Told(summary.StandardDeviation), Told(summary.Least), Told(summary.P05), Told(summary.P50), Told(summary.P95), Told(summary.Greatest));

        double? Told(double? si) => si is { } number ? kind is { } quantity ? write.Of(number, quantity).Value : UnitWriter.Plain(number) : null;
    }

    static SensitivityAnswer Sensitivity(FigureSensitivity one) => new(
        one.Case, SpreadWords.Of(one.Figure), one.Samples, one.Statement,
        [.. one.Inputs.Select(input => new InputIndexAnswer(input.Path, UnitWriter.Plain(input.Index.Value), UnitWriter.Plain(input.Index.StandardError)))]);
}
