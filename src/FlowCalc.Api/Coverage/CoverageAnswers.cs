using FlowCalc.Api.Answers;
using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Quantities;
using UnitsNet;
using Quantity = FlowCalc.Api.Answers.Quantity;

namespace FlowCalc.Api.Coverage;

/// <summary>Writes a coverage of the engine as an answer.</summary>
internal static class CoverageAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static CoverageAnswer Of(Layout layout, CoverageResult result, DischargeResult? discharge, CoverageJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
        [.. result.Nozzles.Select(spray => Nozzle(layout, result, spray, write))],
        [.. result.Surfaces.Select(cover => new SurfaceAnswer(
            cover.Surface.Id, cover.Surface.Zone, Of(cover.Area, write), Of(cover.Covered, write), UnitWriter.Plain(cover.Part), Of(cover.CoveredTwice, write),
            [.. cover.Nozzles.Select(point => layout.Points[point].Id)], Rate(cover.LeastDensity, cover.MostDensity, write)))],
        [.. result.Targets.Select(cover => new TargetAnswer(cover.Target.Id, cover.Target.Zone, cover.IsCovered, [.. cover.Sights.Select(sight => Sight(layout, sight, write))]))],
        [.. result.Persons.Select(aim => new PersonAnswer(
            aim.Person.Id, aim.Person.Zone, aim.Point is { } point ? layout.Points[point].Id : null, aim.OffAxis is { } angle ? Of(angle, write) : null, write.Of(aim.Distance)))],
        [.. result.Zones.Select(fill => Zone(layout, fill, discharge, write))],
        result.NotAnswered,
        CoverageClaims.NotProven(layout),
        judgement.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.For(layout),
        Engine.Answer);

    static NozzleSprayAnswer Nozzle(Layout layout, CoverageResult result, NozzleSpray spray, UnitWriter write) => new(
        layout.Points[spray.Point].Id, ((Nozzle)layout.Points[spray.Point]).Zone,
        spray.Axis is { } axis ? [UnitWriter.Plain(axis.X), UnitWriter.Plain(axis.Y), UnitWriter.Plain(axis.Z)] : null,
        spray.Spray is { } cone ? Of(cone.Angle, write) : null, write.Of(spray.Distance), spray.Flow is { } flow ? new(write.Of(flow.Least), write.Of(flow.Most)) : null,
        [.. spray.Footprints.Select(footprint => new FootprintAnswer(
            result.Surfaces[footprint.Surface].Surface.Id, write.Of(footprint.Height), Of(footprint.Tilt, write), write.Of(footprint.Distance), footprint.IsOpen,
            write.Of(footprint.SemiMajor), write.Of(footprint.SemiMinor), footprint.Centre is { } centre ? [write.Of(centre.X), write.Of(centre.Y), write.Of(centre.Z)] : null,
            footprint.Area is { } area ? Of(area, write) : null, Of(footprint.OnSurface, write),
            spray.Flow is { } span ? Rate(footprint.Density(span.Least), footprint.Density(span.Most), write) : null))]);

    static SightAnswer Sight(Layout layout, TargetSight sight, UnitWriter write) =>
        new(layout.Points[sight.Point].Id, sight.Reaches, write.Of(sight.Distance), Of(sight.OffAxis, write), sight.IsInCone, sight.IsInRange, sight.HiddenBy);

    static ZoneFillAnswer Zone(Layout layout, ZoneFill fill, DischargeResult? discharge, UnitWriter write) => new(
        fill.Zone.Id, fill.Protection == Protection.Flooding ? "flooding" : "local", fill.Zone.Occupied, [.. fill.Nozzles.Select(point => layout.Points[point].Id)],
        fill.Mass is { } mass ? new(write.Of(mass.Least), write.Of(mass.Most)) : null, CaseName(fill.Mass?.LeastCase, discharge, write), CaseName(fill.Mass?.MostCase, discharge, write),
        fill.Air is { } air ? new(UnitWriter.Plain(air.ChangesPerMinute), write.Of(air.HalfLife), UnitWriter.Plain(air.Flowing), write.Of(air.Holds)) : null,
        fill.Need is { } need ? new(
            UnitWriter.Plain(need.Design), need.DesignSource, Of(need.Coldest, write), write.Of(need.Volume.CubicMeters, QuantityKind.Volume), write.Of(need.Mass),
            need.MostMass is { } most ? write.Of(most) : null, need.HasWindow, UnitWriter.Plain(need.Pressure)) : null,
        fill.Exposure is { } exposure ? new(
            UnitWriter.Plain(exposure.Least), UnitWriter.Plain(exposure.Most), Of(exposure.Hottest, write), UnitWriter.Plain(exposure.Oxygen), UnitWriter.Plain(exposure.Unharmed),
            UnitWriter.Plain(exposure.Harmful), write.Of(exposure.Allowed), exposure.AllowedSource) : null);

    static string? CaseName(int? at, DischargeResult? discharge, UnitWriter write)
    {
        if (at is not { } index || discharge is null) return null;
        var one = discharge.Cases[index];
        return $"{QuantityWriter.Text(one.Temperature.Kelvins, QuantityKind.Temperature, write.System, 6)}, {one.Attitude.Name}";
    }

    static SpanAnswer? Rate(double? least, double? most, UnitWriter write) =>
        least is { } low && most is { } high ? new(write.Of(low, QuantityKind.WettingRate), write.Of(high, QuantityKind.WettingRate)) : null;

    static Quantity Of(Area area, UnitWriter write) => write.Of(area.SquareMeters, QuantityKind.Area);

    static Quantity Of(Angle angle, UnitWriter write) => write.Of(angle.Radians, QuantityKind.Angle);

    static Quantity Of(Temperature temperature, UnitWriter write) => write.Of(temperature.Kelvins, QuantityKind.Temperature);
}
