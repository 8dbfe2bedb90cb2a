using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Charts;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;
using UnitsNet;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>The discharge in every case, the slowest with its nozzles and charts.</summary>
static class DischargeSection
{
    public static ReportSection Of(Layout layout, DischargeResult discharge, Shown shown)
    {
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph(Required(discharge, shown)));
        blocks.Add(ReportTable.Of("Cases of temperature and attitude: pressure in the bottle before the valve opens, when the dip tube draws gas, what stays in bottle and tubes", ["case", "#bottle", "#first, last arrival", "#gas from", "#95 % out", "#its band", "#left", "most starved"],
            discharge.Cases.Select(one => Row(layout, one, shown))));
        if (WorstCase.Of(discharge) is not { } worst) return new("Discharge by case", blocks.ToImmutable());

        blocks.Add(new ReportHeading($"The slowest case: {CaseWords.Of(worst, shown)}"));
        blocks.Add(ReportTable.Of("Nozzles", ["nozzle", "#arrival", "#mass", "#share", "#share's band", "#wanted", "#deviation", "#95 % of its own", "#least pressure"],
            worst.Nozzles.Select((nozzle, at) => Row(layout, worst, nozzle, at, shown))));
        blocks.Add(new ReportFigure(FlowChart.Of(layout, worst, shown, ChartSize.Paper)));
        blocks.Add(new ReportFigure(BottleChart.Of(worst, shown, ChartSize.Paper)));
        if (worst.Band is { } band) blocks.Add(new ReportParagraph($"The band is the same discharge with what the model leaves open all one way and all the other: {string.Join("; ", band.From)}."));
        if (worst.QuasiSteady is { } steady) blocks.Add(new ReportParagraph(steady.Verdict));
        return new("Discharge by case", blocks.ToImmutable());
    }

    static string Required(DischargeResult discharge, Shown shown)
    {
        if (discharge.Requirement is not { } asked) return "Nothing is required of the discharge's time.";
        var what = asked.OfContents ? $"{Shown.Percent(asked.Part)} of the contents" : $"{Shown.Percent(asked.Part)} of {(asked.Quantity is { } quantity ? shown.Of(quantity) : "the quantity")}";
        var when = (asked.Earliest, asked.Latest) switch
        {
            ({ } from, { } to) => $"from {Of(from)} to {Of(to)} after the signal",
            ({ } from, null) => $"not before {Of(from)} after the signal",
            (null, { } to) => $"within {Of(to)} of the signal",
            _ => "at any time",
        };
        return $"Required: {what} out {when} ({(discharge.IsRequirementStated ? "stated in the document" : "taken for this application")}).";

        string Of(Duration time) => shown.Of((Duration?)time);
    }

    static string[] Row(Layout layout, DischargeCase one, Shown shown)
    {
        var name = CaseWords.Of(one, shown);
        var before = one.StartPressure is { } pressure ? shown.Gauge(pressure) : Shown.None;
        if (one.Failure is { } failure) return [name, before, Shown.None, Shown.None, "no discharge", Shown.None, Shown.None, failure.Message];
        var arrivals = one.Nozzles.Where(nozzle => nozzle.Arrival is not null).Select(nozzle => nozzle.Arrival!.Value).Order().ToArray();
        var starved = one.Nozzles.Where(nozzle => nozzle.Deviation is not null).MinBy(nozzle => nozzle.Deviation);
        return
        [
            name, before, arrivals.Length == 0 ? Shown.None : $"{shown.Of((Duration?)arrivals[0])}, {shown.Of((Duration?)arrivals[^1])}", shown.Of(one.LiquidEnd), shown.Of(one.Time95),
            one.Band is { } band ? $"{shown.Of(band.Time95.Low)} to {shown.Of(band.Time95.High)}" : Shown.None, shown.Of(one.LeftInBottle + one.LeftInTubes),
            starved is null ? Shown.None : $"{layout.Points[starved.Point].Id} {Shown.Deviation(starved.Deviation)}",
        ];
    }

    static string[] Row(Layout layout, DischargeCase one, NozzleDischarge nozzle, int at, Shown shown) =>
    [
        layout.Points[nozzle.Point].Id, shown.Of(nozzle.Arrival), shown.Of(nozzle.Mass), Shown.Percent(nozzle.Share), one.Band is { } band ? $"{Shown.Percent(band.Shares[at].Low)} to {Shown.Percent(band.Shares[at].High)}" : Shown.None,
        Shown.Percent(nozzle.WantedShare), Shown.Deviation(nozzle.Deviation), shown.Of(nozzle.Time95), nozzle.LeastPressure is { } least ? shown.Gauge(least) : Shown.None,
    ];
}
