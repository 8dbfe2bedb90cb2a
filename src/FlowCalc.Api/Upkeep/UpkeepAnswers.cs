using System.Globalization;
using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Upkeep;
using UnitsNet;
using Quantity = FlowCalc.Api.Answers.Quantity;

namespace FlowCalc.Api.Upkeep;

/// <summary>Writes the upkeep of a bottle as an answer.</summary>
internal static class UpkeepAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static UpkeepAnswer Of(Layout layout, UpkeepResult result, UpkeepJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
        Day(result.Today), result.Next?.Rule.Name, result.Next?.Due is { } due ? Day(due) : null,
        [.. result.Dates.Select(Date)],
        Gauge(layout, result, write),
        result.Weight is { } weight ? new(write.Of(weight.Stamped), write.Of(weight.Gross), UnitWriter.Plain(weight.Lost), UnitWriter.Plain(weight.Doubt)) : null,
        result.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.For(layout),
        Engine.Answer);

    /// <summary>A day, ISO 8601.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    static DueDateAnswer Date(DueDate date) => new(
        date.Rule.Name, date.Counted?.ToString(), date.Rule.Months, date.Due is { } due ? Day(due) : null, date.DaysLeft, date.IsStated, date.Source);

    static GaugeAnswer? Gauge(Layout layout, UpkeepResult result, UnitWriter write)
    {
        if (result.Expected is null && result.Gauge is null) return null;
        var green = layout.Service?.Gauge?.Green;
        Quantity? Of(Pressure? absolute) => absolute is { } known ? write.Gauge(known, layout.AmbientPressure) : null;
        Quantity? Warm(Temperature? temperature) => temperature is { } known ? write.Of(known.Kelvins, QuantityKind.Temperature) : null;
        bool? In(Pressure? absolute) => absolute is { } known && green is { } range ? known >= range.Least && known <= range.Most : null;
        var gauge = result.Gauge;
        return new(
            Warm(result.Expected?.Temperature), Of(result.Expected?.Pressure), result.Expected?.Failure ?? gauge?.Expected.Failure, Of(result.Lowest), In(result.Expected?.Pressure),
            Of(gauge?.Reading), Warm(gauge?.Expected.Temperature), Of(gauge?.Expected.Pressure), UnitWriter.Plain(gauge?.Lost), In(gauge?.Reading));
    }
}
