using FlowCalc.Api.Answers;
using FlowCalc.Api.Flow;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Discharge;

/// <summary>Writes a discharge of the engine as an answer. Absolute pressures become gauge here.</summary>
internal static class DischargeAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static DischargeAnswer Of(Layout layout, DischargeResult discharge, DischargeJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
        [.. discharge.Cases.Select(one => Case(layout, discharge, one, write))],
        discharge.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.For(layout),
        Engine.Answer);

    static CaseAnswer Case(Layout layout, DischargeResult discharge, DischargeCase one, UnitWriter write)
    {
        var isAnswered = one.Failure is null;
        return new(
            write.Of(one.Temperature.Kelvins, QuantityKind.Temperature),
            one.Attitude.Name,
            one.Failure?.Message,
            one.StartPressure is { } start ? write.Gauge(start, layout.AmbientPressure) : null,
            write.Of(one.Time95),
            Requirement(discharge, one, write),
            write.Of(one.LiquidEnd),
            isAnswered ? write.Of(one.End) : null,
            isAnswered ? Word(one.Reason) : null,
            isAnswered ? write.Of(one.PeakMassFlow) : null,
            isAnswered ? write.Gauge(one.PeakPressure, layout.AmbientPressure) : null,
            isAnswered ? write.Of(one.LeftInBottle) : null,
            isAnswered ? write.Of(one.LeftInTubes) : null,
            one.MostInTubes is { } most ? write.Of(most) : null,
            UnitWriter.Plain(one.CushionExponent),
            [.. one.Zones.Select(zone => new ZoneAnswer(zone.Zone, UnitWriter.Plain(zone.Share), UnitWriter.Plain(zone.WantedShare), UnitWriter.Plain(zone.Deviation)))],
            [.. one.Nozzles.Select(nozzle => Nozzle(layout, nozzle, write))],
            one.Band is { } band ? Band(layout, one, band, write) : null,
            one.QuasiSteady is { } scales ? Scales(scales, write) : null,
            one.Series is { } series ? SeriesAnswers.Of(layout, series, write) : null);
    }

    static RequirementAnswer? Requirement(DischargeResult discharge, DischargeCase one, UnitWriter write) =>
        discharge.Requirement is not { } requirement ? null : new(
            UnitWriter.Plain(requirement.Part), requirement.OfContents ? "contents" : "quantity", requirement.Quantity is { } mass ? write.Of(mass) : null,
            discharge.IsRequirementStated, write.Of(one.RequiredTime), [write.Of(requirement.Earliest), write.Of(requirement.Latest)]);

    static NozzleDischargeAnswer Nozzle(Layout layout, NozzleDischarge nozzle, UnitWriter write)
    {
        var point = (Nozzle)layout.Points[nozzle.Point];
        return new(
            point.Id, point.Zone, write.Of(nozzle.Arrival), write.Of(nozzle.Mass), UnitWriter.Plain(nozzle.Share), UnitWriter.Plain(nozzle.WantedShare),
            UnitWriter.Plain(nozzle.Deviation), write.Of(nozzle.Time95), write.Of(nozzle.LiquidEnd), write.Of(nozzle.PeakMassFlow),
            nozzle.Surge is { } surge ? write.Of(surge) : null);
    }

    static BandAnswer Band(Layout layout, DischargeCase one, DischargeBand band, UnitWriter write) => new(
        Times(band.Time95, write), band.RequiredTime is { } required ? Times(required, write) : null,
        [.. one.Nozzles.Select((nozzle, at) => new ShareBandAnswer(layout.Points[nozzle.Point].Id, UnitWriter.Plain(band.Shares[at].Low), UnitWriter.Plain(band.Shares[at].High)))],
        band.From);

    static TimeBandAnswer Times(TimeBand band, UnitWriter write) => new(write.Of(band.Low), write.Of(band.High));

    static QuasiSteadyAnswer Scales(QuasiSteadyCheck check, UnitWriter write) =>
        new(write.Of(check.Emptying), write.Of(check.Inertia), write.Of(check.Acoustic), write.Of(check.Inventory), write.Of(check.Lag), check.Verdict);

    static string Word(StopReason reason) => reason switch
    {
        StopReason.Equalised => "equalised",
        StopReason.FlowStopped => "flow-stopped",
        StopReason.TriplePoint => "triple-point",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Not a reason."),
    };
}
