using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Tests.Layouts;

/// <summary>Lengths, arcs and turns of a way in space, by plane geometry.</summary>
public class RouteGeometryTests
{
    static Place At(double x, double y, double z) => new(Length.FromMeters(x), Length.FromMeters(y), Length.FromMeters(z));

    [Fact]
    public void A_right_angle_shortens_both_legs_by_the_radius_and_adds_a_quarter_circle()
    {
        Assert.True(RouteGeometry.TryLay([At(0, 0, 0), At(1, 0, 0), At(1, 0, 2)], 0.1, out var laid, out _));

        Assert.Equal(0.9 + 1.9 + 0.1 * Math.PI / 2, laid.Length, tolerance: 1e-14);
        Assert.Equal(2, laid.Rise, tolerance: 1e-15);
        Assert.Equal([0.9, 1.9], laid.Route.Straights.Select(straight => Math.Round(straight.Meters, 14)));
        Assert.Equal(90, Assert.Single(laid.Bends).Angle.Degrees, tolerance: 1e-12);
        Assert.Equal(new Direction(1, 0, 0), laid.Route.StartDirection);
        Assert.Equal(new Direction(0, 0, 1), laid.Route.EndDirection);
    }

    [Theory]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(120)]
    [InlineData(150)]
    public void A_turn_takes_the_tangent_of_half_its_angle_from_both_legs(double degrees)
    {
        var turn = degrees * Math.PI / 180;

        Assert.True(RouteGeometry.TryLay([At(0, 0, 0), At(5, 0, 0), At(5 + 5 * Math.Cos(turn), 5 * Math.Sin(turn), 0)], 0.5, out var laid, out _));

        Assert.Equal(10 - 2 * 0.5 * Math.Tan(turn / 2) + 0.5 * turn, laid.Length, tolerance: 1e-12);
        Assert.Equal(degrees, laid.Bends[0].Angle.Degrees, tolerance: 1e-10);
    }

    [Fact]
    public void A_turn_under_a_tenth_of_a_degree_is_straight_on()
    {
        Assert.True(RouteGeometry.TryLay([At(0, 0, 0), At(1, 0, 0), At(2, 0.0017, 0)], null, out var laid, out _));

        Assert.Empty(laid.Bends);
        Assert.Equal(1 + Math.Sqrt(1 + 0.0017 * 0.0017), Assert.Single(laid.Route.Straights).Meters, tolerance: 1e-14);
    }

    [Fact]
    public void What_prevents_a_way_is_named_with_its_place()
    {
        Assert.False(RouteGeometry.TryLay([At(0, 0, 0), At(0, 0, 1e-7)], 0.1, out _, out var same));
        Assert.False(RouteGeometry.TryLay([At(0, 0, 0), At(1, 0, 0), At(0.5, 0, 0)], 0.1, out _, out var back));
        Assert.False(RouteGeometry.TryLay([At(0, 0, 0), At(1, 0, 0), At(1, 1, 0)], null, out _, out var radius));
        Assert.False(RouteGeometry.TryLay([At(0, 0, 0), At(1, 0, 0), At(1, 1, 0)], 1.5, out _, out var room));

        Assert.Equal((RouteFlawKind.SamePlace, 1), (same.Kind, same.Place));
        Assert.Equal((RouteFlawKind.TurnsBack, 1), (back.Kind, back.Place));
        Assert.Equal((RouteFlawKind.NoRadius, 1), (radius.Kind, radius.Place));
        Assert.Equal(RouteFlawKind.NoRoom, room.Kind);
        Assert.Equal(1, room.Size, tolerance: 1e-12);
    }
}
