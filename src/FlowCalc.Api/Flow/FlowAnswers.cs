using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Api.Flow;

/// <summary>Writes a result of the engine as an answer. Absolute pressures become gauge here.</summary>
internal static class FlowAnswers
{
    /// <summary>The answer of a flow that has converged.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static FlowAnswer Of(Layout layout, FlowResult flow, FlowJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        Each(judgement.Findings, finding => FindingAnswer.Of(finding, write)),
        Supply(flow.Supply!, layout, write),
        Each(flow.Zones, zone => new ZoneAnswer(zone.Zone, UnitWriter.Plain(zone.Share), UnitWriter.Plain(zone.WantedShare), UnitWriter.Plain(zone.Deviation))),
        Each(flow.Nozzles, nozzle => Nozzle(nozzle, layout, write)),
        Runs(flow.Runs, layout, write),
        Points(flow, layout, write),
        flow.Band is { } band ? Band(layout, flow, band, write) : null,
        new SolverAnswer(flow.Report.Iterations, UnitWriter.Plain(flow.Report.MassResidual)),
        flow.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.For(layout),
        Engine.Answer);

    static FlowBandAnswer Band(Layout layout, FlowResult flow, FlowBand band, UnitWriter write) => new(
        write.Of(band.Low), write.Of(band.High),
        [.. flow.Nozzles.Select((nozzle, at) => new ShareBandAnswer(layout.Points[nozzle.Point].Id, UnitWriter.Plain(band.Shares[at].Low), UnitWriter.Plain(band.Shares[at].High)))],
        band.From);

    static SupplyAnswer Supply(SupplyFlow supply, Layout layout, UnitWriter write) =>
        new(write.Gauge(supply.Pressure, layout.AmbientPressure), write.Of(supply.MassFlow), write.Of(supply.VolumeFlow));

    static NozzleAnswer Nozzle(NozzleFlow nozzle, Layout layout, UnitWriter write)
    {
        var point = (Nozzle)layout.Points[nozzle.Point];
        return new(
            point.Id, point.Zone, write.Gauge(nozzle.Pressure, layout.AmbientPressure), write.Of(nozzle.MassFlow), write.Of(nozzle.VolumeFlow),
            UnitWriter.Plain(nozzle.Share), UnitWriter.Plain(nozzle.WantedShare), UnitWriter.Plain(nozzle.Deviation), LossesAnswer.Of(nozzle.Losses, write));
    }

    static ImmutableArray<RunAnswer> Runs(ImmutableArray<RunFlow> flows, Layout layout, UnitWriter write)
    {
        var answers = new RunAnswer[flows.Length];
        for (var at = 0; at < answers.Length; at++)
        {
            var (run, flow) = (layout.Runs[at], flows[at]);
            answers[at] = new(
                run.Id, layout.Points[run.From].Id, layout.Points[run.To].Id, write.Of(flow.MassFlow), write.Of(flow.Velocity), UnitWriter.Plain(flow.Reynolds), Word(flow.Regime),
                write.Gauge(flow.PressureIn, layout.AmbientPressure), write.Gauge(flow.PressureOut, layout.AmbientPressure), LossesAnswer.Of(flow.Losses, write));
        }
        return ImmutableCollectionsMarshal.AsImmutableArray(answers);
    }

    static ImmutableArray<PointAnswer> Points(FlowResult flow, Layout layout, UnitWriter write)
    {
        var answers = new PointAnswer[flow.PointPressures.Length];
        for (var at = 0; at < answers.Length; at++)
            answers[at] = new(layout.Points[at].Id, write.Gauge(flow.PointPressures[at], layout.AmbientPressure));
        return ImmutableCollectionsMarshal.AsImmutableArray(answers);
    }

    static string Word(FlowRegime regime) => regime switch
    {
        FlowRegime.AtRest => "at-rest",
        FlowRegime.Laminar => "laminar",
        FlowRegime.Transition => "transition",
        FlowRegime.Turbulent => "turbulent",
        _ => throw new ArgumentOutOfRangeException(nameof(regime), regime, "Not a regime."),
    };

    static ImmutableArray<TAnswer> Each<TItem, TAnswer>(ImmutableArray<TItem> items, Func<TItem, TAnswer> answer)
    {
        var answers = new TAnswer[items.Length];
        for (var at = 0; at < answers.Length; at++)
            answers[at] = answer(items[at]);
        return ImmutableCollectionsMarshal.AsImmutableArray(answers);
    }
}
