using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Coverage;

/// <summary>Works out where the sprays of a layout land, and what its zones get.</summary>
public static class LayoutCoverage
{
    /// <summary>Works it out.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="discharge">Its discharge, of which masses and mean flows are taken; null where it has none or nobody asked for it.</param>
    /// <param name="flow">Its steady flow, taken where there is no discharge; null for none.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The result; what the document gives too little for is listed in it.</returns>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CoverageResult Solve(Layout layout, DischargeResult? discharge, FlowResult? flow = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var notes = new CoverageNotes();
        var plan = layout.Coverage ?? new CoveragePlan();
        var masses = new ZoneMasses(layout, discharge, flow);
        var sprays = NozzleSprays.Of(layout, plan, masses, notes);
        BodyBox[] boxes = [.. plan.Bodies.Select(body => new BodyBox(body))];

        var surfaces = ImmutableArray.CreateBuilder<SurfaceCover>(plan.Surfaces.Length);
        var footprints = sprays.Select(_ => ImmutableArray.CreateBuilder<Footprint>()).ToArray();
        for (var surface = 0; surface < plan.Surfaces.Length; surface++)
            surfaces.Add(SurfaceCovers.Of(layout, plan.Surfaces[surface], surface, sprays, footprints, cancellationToken));
        ImmutableArray<NozzleSpray> nozzles = [.. sprays.Select((spray, at) => spray with { Footprints = footprints[at].DrainToImmutable() })];

        var sights = new TargetSights(layout, nozzles, plan.Bodies, boxes);
        return new(
            nozzles, surfaces.DrainToImmutable(),
            [.. plan.Targets.Select(target => sights.Of(target, cancellationToken))],
            [.. plan.Persons.Select(person => sights.AimAt(person, cancellationToken))],
            ZoneFills.Of(layout, discharge, masses, notes, cancellationToken),
            notes.NotAnswered, notes.Assumptions);
    }

    /// <summary>Surfaces times the nozzles that may spray them, and targets and persons times nozzles: what the work goes with.</summary>
    /// <param name="layout">A layout.</param>
    /// <returns>The pairs in all.</returns>
    public static long Pairs(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Coverage is not { } plan) return 0;
        return (plan.Surfaces.Length + plan.Targets.Length + plan.Persons.Length) * (long)layout.Points.Count(point => point is Nozzle);
    }

    /// <summary>Whether a nozzle of a zone is looked at for a thing of a zone.</summary>
    internal static bool Concerns(string? zoneOfThing, string? zoneOfNozzle) => zoneOfThing is null || zoneOfThing == zoneOfNozzle;
}
