using FlowCalc.Coverage;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Tests.Coverage;

/// <summary>What a coverage tells of a layout.</summary>
public class LayoutCoverageTests
{
    [Fact]
    public void Two_cones_straight_down_cover_two_circles_that_overlap()
    {
        var result = CoverageDocument.Solve(CoverageDocument.Table);

        var table = Assert.Single(result.Surfaces);
        var radius = 0.5 * Math.Tan(Math.PI / 6);
        var footprint = Assert.Single(result.Nozzles[0].Footprints);
        Assert.Equal(radius, footprint.SemiMajor!.Value.Meters, tolerance: 1e-9);
        Assert.Equal(Math.PI * radius * radius, footprint.Area!.Value.SquareMeters, tolerance: 1e-9);
        Assert.Equal(0.5, footprint.Distance!.Value.Meters, tolerance: 1e-9);
        Assert.True(footprint.OnSurface < footprint.Area);
        // The circles are 0.6 m apart and 0.289 m in radius: none of the table is in both, and 0.089 m of each is beyond its edge.
        Assert.Equal(0, table.CoveredTwice.SquareMeters, tolerance: 1e-9);
        var segment = radius * radius * Math.Acos(0.2 / radius) - 0.2 * Math.Sqrt(radius * radius - 0.04);
        Assert.Equal(2 * (Math.PI * radius * radius - segment), table.Covered.SquareMeters, tolerance: 1e-9);
        Assert.Equal([2, 3], table.Nozzles);
    }

    [Fact]
    public void Density_is_the_flow_over_the_ellipse_and_its_part_over_the_face()
    {
        var result = CoverageDocument.Solve(CoverageDocument.Table);

        var (spray, footprint, table) = (result.Nozzles[0], result.Nozzles[0].Footprints[0], result.Surfaces[0]);
        var density = spray.Flow!.Value.Least.CubicMetersPerSecond / footprint.Area!.Value.SquareMeters;
        Assert.Equal(density, footprint.Density(spray.Flow.Value.Least)!.Value, tolerance: 1e-15);
        var landed = result.Nozzles.Take(2).Sum(one => one.Footprints[0].Density(one.Flow!.Value.Least)!.Value * one.Footprints[0].OnSurface.SquareMeters);
        Assert.Equal(landed / table.Area.SquareMeters, table.LeastDensity!.Value, tolerance: 1e-12);
    }

    [Fact]
    public void A_body_hides_a_target_but_not_one_on_its_face_and_not_a_surface()
    {
        (string, string?) over = ("/coverage/bodies/shelf", """{ "from": ["0.4 m", "0.1 m", "0.2 m"], "to": ["0.6 m", "0.3 m", "0.3 m"] }""");
        var hidden = CoverageDocument.Solve(CoverageDocument.Table, over);
        var onFace = CoverageDocument.Solve(CoverageDocument.Table, over, ("/coverage/targets/vice/at", """["0.5 m", "0.2 m", "0.3 m"]"""), ("/points/3/aim", "[0, 0, -1]"));
        var open = CoverageDocument.Solve(CoverageDocument.Table);

        Assert.Equal("shelf", hidden.Targets[0].Sights[1].HiddenBy);
        Assert.False(hidden.Targets[0].IsCovered);
        Assert.True(onFace.Targets[0].IsCovered);
        Assert.True(open.Targets[0].IsCovered);
        Assert.Equal(open.Surfaces[0].Covered.SquareMeters, hidden.Surfaces[0].Covered.SquareMeters, tolerance: 1e-12);
    }

    [Fact]
    public void A_nozzle_of_another_zone_counts_only_where_no_zone_is_named()
    {
        (string, string?) wide = ("/coverage/surfaces/table/edges", """[["4 m", "0 m", "0 m"], ["0 m", "1 m", "0 m"]]""");
        var own = CoverageDocument.Solve(CoverageDocument.Table, wide);
        var any = CoverageDocument.Solve(CoverageDocument.Table, wide, ("/coverage/surfaces/table/zone", null));

        Assert.Equal([2, 3], own.Surfaces[0].Nozzles);
        Assert.Equal([2, 3, 4], any.Surfaces[0].Nozzles);
    }

    [Fact]
    public void A_nozzle_behind_a_face_does_not_spray_it()
    {
        Assert.Equal([2, 3], CoverageDocument.Solve(CoverageDocument.Table, ("/coverage/surfaces/table/faces", "[0, 0.2, 1]")).Surfaces[0].Nozzles);
        Assert.Empty(CoverageDocument.Solve(CoverageDocument.Table, ("/coverage/surfaces/table/faces", "[0, 0.2, -1]")).Surfaces[0].Nozzles);
    }

    [Fact]
    public void The_spray_of_a_point_stands_before_that_of_its_type()
    {
        var result = CoverageDocument.Solve(CoverageDocument.Table, ("/points/2/spray", """{ "angle": "90°" }"""));

        Assert.Equal(90, result.Nozzles[0].Spray!.Angle.Degrees, tolerance: 1e-9);
        Assert.Equal(60, result.Nozzles[1].Spray!.Angle.Degrees, tolerance: 1e-9);
    }

    [Fact]
    public void Zones_get_what_their_nozzles_give_and_what_is_flooded_is_worked_out()
    {
        var result = CoverageDocument.Solve(CoverageDocument.Space);
        var engine = result.Zones[0];

        Assert.Equal(Protection.Flooding, engine.Protection);
        Assert.Equal(1.9484062, engine.Need!.Mass.Kilograms, tolerance: 1e-6);
        Assert.Equal(1.677154, engine.Need.MostMass!.Value.Kilograms, tolerance: 1e-6);
        Assert.False(engine.Need.HasWindow);
        Assert.True(engine.Mass!.Least <= engine.Mass.Most);
        Assert.InRange(result.Zones.Sum(zone => zone.Mass!.Least.Kilograms), 3.5, 4);
        Assert.Equal(engine.Mass.Most.Kilograms, engine.Exposure!.Most / (1 - engine.Exposure.Most) * 2.5 / (0.1269 + 0.0005131 * 40), tolerance: 1e-9);
        Assert.Equal(0.2095 * (1 - engine.Exposure.Most), engine.Exposure.Oxygen, tolerance: 1e-12);
    }

    [Fact]
    public void Compressed_air_and_altitude_change_what_a_zone_needs()
    {
        var low = CoverageDocument.Solve(CoverageDocument.Space).Zones[0].Need!;
        var high = CoverageDocument.Solve(CoverageDocument.Space, ("/altitude", "\"1500 m\"")).Zones[0].Need!;
        var air = CoverageDocument.Solve(CoverageDocument.Space, ("/zones/engine/airBottle", """{ "volume": "20 L", "pressure": "30.3975 bar" }""")).Zones[0].Need!;

        Assert.Equal(0.83450274, high.Mass / low.Mass, tolerance: 1e-7);
        // 30 atm of gauge pressure let out 30 times the bottle's volume.
        Assert.Equal((2.5 + 0.6) / 2.5, air.Mass / low.Mass, tolerance: 1e-9);
    }

    [Fact]
    public void Air_through_a_zone_thins_what_is_in_it()
    {
        var zone = CoverageDocument.Solve(CoverageDocument.Space, ("/zones/engine/airflow", "\"0.2 m3/s\"")).Zones[0];

        Assert.Equal(4.8, zone.Air!.ChangesPerMinute, tolerance: 1e-9);
        Assert.Equal(12.5 * Math.Log(2), zone.Air.HalfLife!.Value.Seconds, tolerance: 1e-9);
        Assert.InRange(zone.Air.Flowing!.Value, 0.01, 0.6);
        Assert.Equal(12.5 * Math.Log(zone.Exposure!.Least / zone.Need!.Design), zone.Air.Holds!.Value.Seconds, tolerance: 1e-9);
    }

    [Fact]
    public void What_is_not_given_is_listed_and_not_guessed()
    {
        var result = CoverageDocument.Solve(CoverageDocument.Space, ("/zones/engine/volume", null), ("/zones/locker/hazard", "\"alcohol\""), ("/zones/locker/protection", "\"flooding\""));
        var geometry = CoverageDocument.Solve(CoverageDocument.Table, ("/points/2/aim", null));

        Assert.Contains("the concentration in zone engine: its volume is needed", result.NotAnswered);
        Assert.Contains(result.NotAnswered, line => line.StartsWith("the agent that zone locker needs", StringComparison.Ordinal));
        Assert.Contains(result.Assumptions, one => one is { Pointer: "/zones/engine/protection", Value: "flooding" });
        Assert.Contains("where the spray goes of left: at, aim and spray are needed", geometry.NotAnswered);
        Assert.Contains("what zone bench gets: a bottle with a discharge is needed, or a requirement with a quantity", geometry.NotAnswered);
    }

    [Fact]
    public void A_quantity_that_is_required_of_a_held_supply_is_shared_by_the_flow()
    {
        var zone = CoverageDocument.Solve(CoverageDocument.Table, ("/requirement", """{ "part": 0.95, "of": "quantity", "quantity": "6 kg", "within": ["0 s", "60 s"] }""")).Zones[0];

        Assert.InRange(zone.Mass!.Least.Kilograms, 3.9, 4.1);
        Assert.Null(zone.Mass.LeastCase);
    }

    [Fact]
    public void The_demo_covers_its_targets_and_points_at_nobody()
    {
        var layout = LayoutReader.Read(ExampleCatalogue.Find("raid-pickup")!.Value, cancellationToken: TestContext.Current.CancellationToken).Layout!;

        var (result, judgement) = CoverageDocument.Judged(layout);

        Assert.All(result.Targets, cover => Assert.True(cover.IsCovered, cover.Target.Id));
        Assert.All(result.Persons, aim => Assert.True(aim.OffAxis!.Value.Degrees > 60, aim.Person.Id));
        Assert.All(result.Surfaces, cover => Assert.InRange(cover.Part, 0.2, 1));
        Assert.Equal(Severity.Note, judgement.Verdict);
        Assert.Empty(result.NotAnswered);
    }

    [Fact]
    public void The_same_layout_gives_the_same_answer()
    {
        var (one, other) = (CoverageDocument.Solve(CoverageDocument.Table), CoverageDocument.Solve(CoverageDocument.Table));

        Assert.Equal(one.Surfaces.Select(cover => cover.Covered.SquareMeters), other.Surfaces.Select(cover => cover.Covered.SquareMeters));
    }

    [Fact]
    public async Task A_cancelled_token_ends_the_work()
    {
        using var source = new CancellationTokenSource();
        await source.CancelAsync();

        Assert.Throws<OperationCanceledException>(() => LayoutCoverage.Solve(CoverageDocument.Read(CoverageDocument.Table), null, null, source.Token));
    }
}
