using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Checks;
using FlowCalc.Upkeep;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What falls due, and what weighing and gauge say; none of a document without a service, or without a day.</summary>
static class UpkeepSection
{
    public static ReportSection? Of(LayoutCheck check, Shown shown)
    {
        if (check.Upkeep is not { Result: var upkeep }) return null;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph($"Judged for {Day(upkeep.Today)}, the day that was given. Intervals are whole calendar months; the due day itself is still good."));
        blocks.Add(ReportTable.Of("Dates", ["what", "counted from", "#months", "good until", "#days left", "whose rule"], upkeep.Dates.Select(date => new[]
        {
            date.Rule.Name, date.Counted?.ToString() ?? Shown.None, date.Rule.Months.ToString(CultureInfo.InvariantCulture), date.Due is { } due ? Day(due) : "no date to count from",
            date.DaysLeft is { } days ? days.ToString(CultureInfo.InvariantCulture).Replace('-', '−') : Shown.None, date.Source,
        })));
        if (upkeep.Weight is { } weight)
            blocks.Add(new ReportParagraph($"Weighed: {shown.Of(weight.Gross)} of {shown.Of(weight.Stamped)} when full, so {Shown.Percent(weight.Lost)} of the agent is gone{(weight.Doubt is { } doubt ? $", with a step of the scale of {Shown.Percent(doubt)}" : "")}."));
        if (upkeep.Gauge is { } gauge) blocks.Add(new ReportParagraph(Read(gauge, shown)));
        if (upkeep.Expected is { } expected)
            blocks.Add(new ReportParagraph(expected.Pressure is { } pressure
                ? $"At {shown.Of(expected.Temperature)} the gauge of a sound bottle shows {shown.Gauge(pressure)}{(upkeep.Lowest is { } lowest ? $"; under {shown.Gauge(lowest)} too much is lost" : "")}."
                : $"What the gauge shows at {shown.Of(expected.Temperature)} cannot be told: {expected.Failure}."));
        return new("Dates, weight and gauge", blocks.ToImmutable());
    }

    static string Read(GaugeCheck gauge, Shown shown)
    {
        var read = $"Read: {shown.Gauge(gauge.Reading)} at {shown.Of(gauge.Expected.Temperature)}";
        return gauge.Expected.Pressure is { } full
            ? $"{read}; a sound bottle shows {shown.Gauge(full)} then{(gauge.Lost is { } lost ? $", so {Shown.Percent(lost).Replace('-', '−')} is lost" : "")}."
            : $"{read}; what a sound bottle shows then cannot be told: {gauge.Expected.Failure}.";
    }

    static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
