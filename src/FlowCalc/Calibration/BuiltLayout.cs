using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Calibration;

/// <summary>A layout with what a cause changes in it.</summary>
static class BuiltLayout
{
    /// <summary>The layout with one roughness in all tube.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="roughness">Roughness, m.</param>
    public static Layout WithRoughness(Layout layout, double roughness) => WithTubes(layout, tube => tube with { Roughness = Length.FromMeters(roughness) });

    /// <summary>The layout with every bore larger or smaller.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="factor">Bore over that which was drawn.</param>
    public static Layout WithBores(Layout layout, double factor) => WithTubes(layout, tube => tube with { Bore = Length.FromMeters(tube.Bore.Meters * factor) });

    /// <summary>The layout with other nozzles.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="groups">The makes.</param>
    /// <param name="factors">K-factor of each over that which was stated.</param>
    public static Layout WithNozzles(Layout layout, ImmutableArray<NozzleGroup> groups, IReadOnlyList<double> factors)
    {
        // What is asked of a nozzle goes with the K-factor that was drawn, and not with the one that it turned out to have.
        var wanted = WantedShares.Of(layout);
        var points = layout.Points.ToBuilder();
        for (var point = 0; point < points.Count; point++)
            if (points[point] is Nozzle one) points[point] = one with { Share = wanted[point] };
        for (var group = 0; group < groups.Length; group++)
            foreach (var point in groups[group].Points)
            {
                var nozzle = (Nozzle)points[point];
                var orifice = nozzle.Orifice is { } holes ? holes with { Diameter = Length.FromMeters(holes.Diameter.Meters * Math.Sqrt(factors[group])) } : null;
                points[point] = nozzle with { KFactor = nozzle.KFactor * factors[group], Orifice = orifice };
            }
        return layout with { Points = points.ToImmutable() };
    }

    /// <summary>The layout with a run that loses more.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="run">Index of the run.</param>
    /// <param name="coefficient">Loss coefficient besides, on its own velocity head.</param>
    public static Layout WithLoss(Layout layout, int run, double coefficient)
    {
        var changed = layout.Runs[run] with { LossCoefficient = layout.Runs[run].LossCoefficient + coefficient };
        return layout with { Runs = layout.Runs.SetItem(run, changed) };
    }

    /// <summary>The layout as a cause says that it was built; as drawn where only the test's own pressure was another.</summary>
    /// <param name="layout">The layout as drawn.</param>
    /// <param name="cause">The cause with its sizes.</param>
    public static Layout Of(Layout layout, CauseFit cause) => cause.Kind switch
    {
        CauseKind.Roughness => WithRoughness(layout, cause.Unknowns[0].Value),
        CauseKind.Bore => WithBores(layout, cause.Unknowns[0].Value),
        CauseKind.Nozzles => WithNozzles(layout, [.. cause.Unknowns.Select(unknown => unknown.Nozzles!)], [.. cause.Unknowns.Select(unknown => unknown.Value)]),
        CauseKind.Run => WithLoss(layout, cause.Run, cause.Unknowns[0].Value),
        _ => layout,
    };

    static Layout WithTubes(Layout layout, Func<Tube, Tube> change) => layout with
    {
        Runs = [.. layout.Runs.Select(run => run with { Tube = change(run.Tube) })],
        Tubes = [.. layout.Tubes.Select(change)],
    };
}
