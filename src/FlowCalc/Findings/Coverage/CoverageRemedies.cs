using FlowCalc.Findings.Cures;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Findings.Coverage;

/// <summary>What may clear a finding of a coverage: a nozzle turned to a target, another fill or charge.</summary>
static class CoverageRemedies
{
    // A little past what is computed, for the discharge does not go with the fill exactly.
    const double Beyond = 1.02;

    /// <summary>The changes to try, likeliest first.</summary>
    public static IEnumerable<CoverageChange> For(FoundEntry entry, JudgedCoverage judged)
    {
        var result = judged.Result;
        switch (entry.Finding.Code)
        {
            case CoverageCodes.TargetNotCovered:
                var cover = result.Targets[entry.Item];
                return cover.Sights.OrderBy(sight => sight.OffAxis.Radians).ThenBy(sight => sight.Point).SelectMany(sight => Turned(judged, sight.Point, [cover.Target]));
            case CoverageCodes.AimedAtPerson when result.Persons[entry.Item].Point is { } point:
                return Turned(judged, point, judged.Layout.Coverage!.Targets);
            case CoverageCodes.TooLittleAgent when result.Zones[entry.Item] is { Need: { } need, Mass: { } mass } && mass.Least.Kilograms > 0:
                return Filled(judged, need.Mass / mass.Least, [Beyond, Beyond * Beyond * Beyond]);
            case CoverageCodes.OverNoael or CoverageCodes.OverLoael or CoverageCodes.LowOxygen when result.Zones[entry.Item] is { Need: { MostMass: { } most }, Mass: { } mass }:
                return Filled(judged, most / mass.Most, [1 / Beyond, 1 / (Beyond * Beyond * Beyond)]);
            default:
                return [];
        }
    }

    static IEnumerable<CoverageChange> Turned(JudgedCoverage judged, int point, IEnumerable<Target> targets)
    {
        var nozzle = (Nozzle)judged.Layout.Points[point];
        foreach (var target in targets)
        {
            var isHere = nozzle.At is { } at && (SurfacePlane.Of(target.At) - SurfacePlane.Of(at)).Length < 1e-6;
            if (nozzle.Aim?.Target == target.Id || isHere || !FlowCalc.Coverage.LayoutCoverage.Concerns(target.Zone, nozzle.Zone)) continue;
            var changed = judged.Layout with { Points = judged.Layout.Points.SetItem(point, nozzle with { Aim = new NozzleAim(null, null, target.Id) }) };
            yield return new([new(EditPath.Of("points", nozzle.Id, "aim"), From(nozzle.Aim!), target.Id)], $"{Wording.Id(nozzle.Id)} aimed at {Wording.Id(target.Id)}", changed, MovesFlow: false);
        }
    }

    static ChangeValue From(NozzleAim aim)
    {
        if (aim.Target is { } target) return target;
        if (aim.Direction is { } direction) return ChangeValue.FromEntries(ChangeValue.FromNumber(direction.X), ChangeValue.FromNumber(direction.Y), ChangeValue.FromNumber(direction.Z));
        var place = SurfacePlane.Of(aim.Place!.Value);
        return ChangeValue.FromEntries(Metres(place.X), Metres(place.Y), Metres(place.Z));
    }

    static ChangeValue Metres(double metres) => SizeText.Exact(metres, Quantities.QuantityKind.Length).Text;

    static IEnumerable<CoverageChange> Filled(JudgedCoverage judged, double ratio, double[] beyond)
    {
        // A held supply gives the quantity that is asked of it at any pressure.
        if (judged.Discharge is null) yield break;
        foreach (var further in beyond)
            if ((BottleChanges.Fill(judged, ratio * further) ?? BottleChanges.Pressure(judged, ratio * further)) is { } change)
                yield return new(change.Changes, change.Words, change.Changed, MovesFlow: true);
    }
}
