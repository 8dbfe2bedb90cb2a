using FlowCalc.Coverage;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings.Coverage;

/// <summary>Sprays that point at people, miss targets, end too near or too far, or run out to no end.</summary>
static class Sprays
{
    const double Nearest = 0.1, Slack = 1e-9;

    public static void Find(JudgedCoverage judged, FindingList findings)
    {
        Aimed(judged, findings);
        Missed(judged, findings);
        Throws(judged, findings);
        Open(judged, findings);
    }

    static void Aimed(JudgedCoverage judged, FindingList findings)
    {
        var limit = judged.Limit(CoverageCodes.AimedAtPerson);
        for (var at = 0; at < judged.Result.Persons.Length; at++)
        {
            var aim = judged.Result.Persons[at];
            if (aim is not { Point: { } point, OffAxis: { } angle, Distance: { } distance }) continue;
            var (severity, step) = Grading.Of(limit, angle.Radians, lowerIsWorse: true);
            if (severity == Severity.Pass) continue;
            findings.Add(new Finding(CoverageCodes.AimedAtPerson, severity, [judged.PointId(point), aim.Person.Id],
                $"{Wording.Id(judged.PointId(point))} points {judged.Text(angle)} beside {Wording.Id(aim.Person.Id)}, {judged.Text(distance)} away and behind no body; at least {Wording.Of(step, QuantityKind.Angle, judged.Units)} keep its jet off a person.",
                new Measure(angle.Radians, QuantityKind.Angle), new Measure(step, QuantityKind.Angle), limit.Source, null), at);
        }
    }

    static void Missed(JudgedCoverage judged, FindingList findings)
    {
        for (var at = 0; at < judged.Result.Targets.Length; at++)
        {
            var cover = judged.Result.Targets[at];
            if (cover.IsCovered) continue;
            var nearest = Nearly(cover, judged);
            var half = nearest is null ? (double?)null : HalfAngle(judged, nearest.Point);
            findings.Add(new Finding(CoverageCodes.TargetNotCovered, Severity.Warn, [cover.Target.Id],
                $"No spray comes to {Wording.Id(cover.Target.Id)}: {Why(judged, nearest, half)}.",
                nearest is { IsInCone: false } ? new Measure(nearest.OffAxis.Radians, QuantityKind.Angle) : null, nearest is { IsInCone: false } ? new Measure(half!.Value, QuantityKind.Angle) : null, "geometry", null), at);
        }
    }

    // The sight of a target that comes nearest to reaching it; null where no spray is known.
    static TargetSight? Nearly(TargetCover cover, JudgedCoverage judged) => cover.Sights
        .OrderBy(sight => (sight.IsInCone ? 0 : 1) + (sight.IsInRange ? 0 : 1) + (sight.HiddenBy is null ? 0 : 1))
        .ThenBy(sight => sight.OffAxis.Radians - HalfAngle(judged, sight.Point)).ThenBy(sight => sight.Point).FirstOrDefault();

    static double HalfAngle(JudgedCoverage judged, int point) => judged.Result.Nozzles.First(spray => spray.Point == point).Spray!.Angle.Radians / 2;

    static string Why(JudgedCoverage judged, TargetSight? sight, double? half)
    {
        if (sight is null) return "no nozzle of its zone has a place, an aim and a spray";
        var id = Wording.Id(judged.PointId(sight.Point));
        List<string> reasons = [];
        if (!sight.IsInCone) reasons.Add($"it lies {judged.Text(sight.OffAxis)} off the axis of {id}, whose cone reaches {Wording.Of(half!.Value, QuantityKind.Angle, judged.Units)}");
        if (!sight.IsInRange) reasons.Add($"it is {judged.Text(sight.Distance)} from {id}, out of its range");
        if (sight.HiddenBy is { } body) reasons.Add($"{Wording.Id(body)} stands between it and {id}");
        return string.Join(", and ", reasons) + (reasons.Count > 0 ? ", which comes nearest" : "");
    }

    static void Throws(JudgedCoverage judged, FindingList findings)
    {
        List<Hit>? stated = null, usual = null;
        foreach (var spray in judged.Result.Nozzles)
        {
            if (spray is not { Distance: { } distance, Spray: { } cone }) continue;
            var (way, id) = (distance.Meters, judged.PointId(spray.Point));
            if (cone.Nearest is { } nearest && way < nearest.Meters - Slack) (stated ??= []).Add(new Hit(spray.Point, id, Severity.Note, nearest.Meters - way, way, nearest.Meters));
            else if (cone.Farthest is { } farthest && way > farthest.Meters + Slack) (stated ??= []).Add(new Hit(spray.Point, id, Severity.Note, way - farthest.Meters, way, farthest.Meters));
            else if (cone.Nearest is null && way < Nearest - Slack) (usual ??= []).Add(new Hit(spray.Point, id, Severity.Note, Nearest - way, way, Nearest));
        }
        findings.Add(CoverageCodes.OutOfThrow, "the nozzle's range", QuantityKind.Length, "nozzle", stated, Sentence);
        findings.Add(CoverageCodes.OutOfThrow, DefaultLimits.CommonPractice, QuantityKind.Length, "nozzle", usual, Sentence);

        string Sentence(Hit hit) =>
            $"{Wording.Id(hit.Id)} has {judged.Text(Length.FromMeters(hit.Measured))} to what it sprays, and does its work from {(hit.Measured < hit.Bound ? "" : "nearer: up to ")}{judged.Text(Length.FromMeters(hit.Bound))}{(hit.Measured < hit.Bound ? " on" : "")}";
    }

    static void Open(JudgedCoverage judged, FindingList findings)
    {
        List<Hit>? hits = null;
        foreach (var spray in judged.Result.Nozzles)
            if (spray.Footprints.FirstOrDefault(footprint => footprint.IsOpen) is { } open)
            {
                var angle = open.Tilt.Radians + spray.Spray!.Angle.Radians / 2;
                (hits ??= []).Add(new Hit(spray.Point, judged.PointId(spray.Point), Severity.Note, angle, angle, Math.PI / 2));
            }
        findings.Add(CoverageCodes.OpenFootprint, "geometry", QuantityKind.Angle, "nozzle", hits, hit =>
            $"The spray of {Wording.Id(hit.Id)} grazes {Wording.Id(judged.Result.Surfaces[judged.Result.Nozzles.First(spray => spray.Point == hit.Item).Footprints.First(footprint => footprint.IsOpen).Surface].Surface.Id)}: half angle and tilt are {judged.Text(Angle.FromRadians(hit.Measured))} together, so that its edge runs out to no end and no mean density is told");
    }
}
