using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Calibration;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using UnitsNet;
using Quantity = FlowCalc.Api.Answers.Quantity;

namespace FlowCalc.Api.Calibration;

/// <summary>Writes a calibration of the engine as an answer.</summary>
internal static class CalibrationAnswers
{
    const int Most = 20;

    static readonly string[] Causes = ["as-drawn", "supply-pressure", "roughness", "bore", "nozzles", "run"];
    static readonly string[] Unknowns = ["pressure-factor", "roughness", "bore-factor", "nozzle-factor", "loss-coefficient"];

    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static CalibrationAnswer Of(Layout layout, CalibrationResult result, CalibrationJudgement judgement, UnitWriter write)
    {
        var measured = layout.Measured!;
        var density = measured.Agent.Density(measured.Temperature.Kelvins);
        var listed = result.Causes.Where((cause, at) => at < Most || cause.Kind == CauseKind.AsDrawn).ToArray();
        return new CalibrationAnswer(
            SeverityWord.Of(judgement.Verdict),
            [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
            new(measured.Agent.Id, write.Of(measured.Temperature.Kelvins, QuantityKind.Temperature), write.Of(density, QuantityKind.Density),
                measured.SupplyPressure is { } held ? write.Gauge(held, layout.AmbientPressure) : null),
            [.. measured.Readings.Select((_, at) => Reading(layout, result, at, density, write))],
            Cause(layout, result.Best!, result, write),
            [.. listed.Select(cause => Cause(layout, cause, result, write))],
            result.Causes.Length - listed.Length,
            [.. result.LeftOut.Take(Most).Select(left => new LeftOutAnswer(Causes[(int)left.Kind], RunId(layout, left.Run), left.Why))],
            AsBuilt(layout, result, judgement, write),
            measured.Assumptions,
            LimitAnswers.Of(judgement.Limits, write),
            Cautions.For(layout),
            Engine.Answer);
    }

    static ReadingAnswer Reading(Layout layout, CalibrationResult result, int at, double density, UnitWriter write)
    {
        var reading = layout.Measured!.Readings[at];
        var (drawn, likeliest) = (result.Drawn!.Predicted[at], result.Best!.Predicted[at]);
        Quantity Of(double value) => reading.Kind switch
        {
            MeasuredKind.Flow => write.Of(value / density, QuantityKind.VolumeFlow),
            MeasuredKind.Pressure => write.Gauge(Pressure.FromPascals(value), layout.AmbientPressure),
            _ => write.Of(value, QuantityKind.Time),
        };
        var width = reading.Kind == MeasuredKind.Pressure ? write.Of(Pressure.FromPascals(reading.Uncertainty)) : Of(reading.Uncertainty);
        double Off(double predicted) => UnitWriter.Plain((reading.Value - predicted) / reading.Sigma);
        var kind = reading.Kind switch { MeasuredKind.Flow => "flow", MeasuredKind.Pressure => "pressure", _ => "discharge-time" };
        return new(kind, reading.Point < 0 ? null : layout.Points[reading.Point].Id, Of(reading.Value), width, Of(drawn), Of(likeliest), Off(drawn), Off(likeliest));
    }

    static CauseAnswer Cause(Layout layout, CauseFit cause, CalibrationResult result, UnitWriter write) => new(
        Causes[(int)cause.Kind], RunId(layout, cause.Run), [.. cause.Unknowns.Select(unknown => Unknown(layout, unknown, write))],
        UnitWriter.Plain(cause.ChiSquare), cause.DegreesOfFreedom, cause.DegreesOfFreedom > 0 ? UnitWriter.Plain(cause.ChiSquare / cause.DegreesOfFreedom) : null,
        UnitWriter.Plain(cause.Chance), UnitWriter.Plain(cause.Score), UnitWriter.Plain(cause.Score - result.Best!.Score), UnitWriter.Plain(cause.FlowLost));

    static UnknownAnswer Unknown(Layout layout, FittedUnknown unknown, UnitWriter write)
    {
        Quantity Of(double value) => unknown.Kind == UnknownKind.Roughness ? write.Of(value, QuantityKind.Length) : new(UnitWriter.Plain(value), "1");
        ImmutableArray<string> nozzles = unknown.Nozzles is not { } group ? [] : group.Type is { } type ? [type] : [.. group.Points.Select(point => layout.Points[point].Id)];
        return new(Unknowns[(int)unknown.Kind], nozzles, Of(unknown.Value), unknown.StandardError is { } error ? Of(error) : null, Of(unknown.Low), Of(unknown.High), unknown.IsAtBound);
    }

    static AsBuiltAnswer AsBuilt(Layout layout, CalibrationResult result, CalibrationJudgement judgement, UnitWriter write) => new(
        [.. judgement.Changes.Select(CureChangeAnswer.Of)], CureOutcomeAnswer.Of(judgement.Drawn, write), CureOutcomeAnswer.Of(judgement.Built, write),
        [.. result.DrawnFlow!.Nozzles.Zip(result.BuiltFlow!.Nozzles, (drawn, built) => new BuiltNozzleAnswer(
            layout.Points[drawn.Point].Id, ((Nozzle)layout.Points[drawn.Point]).Zone, UnitWriter.Plain(drawn.WantedShare), UnitWriter.Plain(drawn.Share), UnitWriter.Plain(built.Share),
            UnitWriter.Plain(drawn.Deviation), UnitWriter.Plain(built.Deviation), write.Of(drawn.MassFlow), write.Of(built.MassFlow),
            write.Gauge(drawn.Pressure, layout.AmbientPressure), write.Gauge(built.Pressure, layout.AmbientPressure)))]);

    static string? RunId(Layout layout, int run) => run < 0 ? null : layout.Runs[run].Id;
}
