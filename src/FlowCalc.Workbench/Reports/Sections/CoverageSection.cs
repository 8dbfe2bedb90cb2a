using System.Collections.Immutable;
using FlowCalc.Checks;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>Where sprays land, and what zones get; none of a document with neither zones nor coverage.</summary>
static class CoverageSection
{
    const int MostNames = 6;

    public static ReportSection? Of(LayoutCheck check, Shown shown)
    {
        if (check.Coverage is not { Result: var coverage }) return null;
        var points = check.Layout.Points;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph("Cones are taken as full, straight and sharp at the edge, in still air. What that does not prove stands at the end of this report and with every answer."));
        blocks.Add(ReportTable.Of("Zones", ["zone", "protection", "#nozzles", "#gets, least", "#most", "#needs", "#concentration, least", "#most", "#oxygen left"], coverage.Zones.Select(zone => new[]
        {
            zone.Zone.Id, zone.Protection.ToString().ToLowerInvariant(), Shown.Count(zone.Nozzles.Length), zone.Mass is { } mass ? shown.Of(mass.Least) : Shown.None, zone.Mass is { } all ? shown.Of(all.Most) : Shown.None,
            zone.Need is { } need ? shown.Of(need.Mass) : Shown.None, zone.Exposure is { } least ? Shown.Percent(least.Least) : Shown.None, zone.Exposure is { } most ? Shown.Percent(most.Most) : Shown.None,
            zone.Exposure is { } air ? Shown.Percent(air.Oxygen) : Shown.None,
        })));
        if (!coverage.Surfaces.IsEmpty)
            blocks.Add(ReportTable.Of("Surfaces", ["surface", "zone", "#area", "#covered", "#by two or more", "#wetting, least", "#most", "by"], coverage.Surfaces.Select(cover => new[]
            {
                cover.Surface.Id, cover.Surface.Zone ?? "", Area(cover.Area), Shown.Percent(cover.Part), Shown.Percent(cover.CoveredTwice / cover.Area), Wetting(cover.LeastDensity), Wetting(cover.MostDensity), Names(cover.Nozzles),
            })));
        if (!coverage.Targets.IsEmpty)
            blocks.Add(ReportTable.Of("Targets", ["target", "zone", "reached by", "hidden from"], coverage.Targets.Select(cover => new[]
            {
                cover.Target.Id, cover.Target.Zone ?? "", cover.IsCovered ? Names(cover.Sights.Where(sight => sight.Reaches).Select(sight => sight.Point)) : "nothing",
                Names(cover.Sights.Where(sight => sight.IsInCone && sight.HiddenBy is not null).Select(sight => sight.Point)),
            })));
        if (!coverage.Persons.IsEmpty)
            blocks.Add(ReportTable.Of("Persons, and the nozzle that points most at each", ["person", "nozzle", "#off its axis", "#distance"], coverage.Persons.Select(aim => new[]
            {
                aim.Person.Id, aim.Point is { } point ? points[point].Id : Shown.None, aim.OffAxis is { } angle ? shown.Of(angle.Radians, QuantityKind.Angle) : Shown.None, aim.Distance is { } way ? shown.Of(way) : Shown.None,
            })));
        if (!coverage.NotAnswered.IsEmpty) blocks.Add(new ReportList(coverage.NotAnswered));
        return new("Sprays and zones", blocks.ToImmutable());

        string Names(IEnumerable<int> nozzles) => ReportTable.Few([.. nozzles.Select(nozzle => points[nozzle].Id)], MostNames);
        string Area(UnitsNet.Area area) => shown.Of(area.SquareMeters, QuantityKind.Area);
        string Wetting(double? rate) => rate is { } known ? shown.Of(known, QuantityKind.WettingRate) : Shown.None;
    }
}
