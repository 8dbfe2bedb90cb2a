using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Tests.ClosedForms.Bottles;

/// <summary>Where a bottle's liquid lies and what of it stays, in attitudes that can be worked out by hand.</summary>
public class BottlePlaceTests
{
    const double Radius = 0.065, Inside = 0.4, Floor = 0.012;
    static readonly double Whole = Math.PI * Radius * Radius * Inside;

    static Bottle Of(DipTube? dipTube, double[]? axis = null, bool hasOutlet = true, BottleShape? shape = null) => new()
    {
        Volume = Volume.FromCubicMeters(Whole),
        Fill = Mass.FromKilograms(4),
        ChargePressure = Pressure.FromBars(15),
        ChargeTemperature = Temperature.FromDegreesCelsius(20),
        Shape = shape ?? new(Length.FromMeters(2 * Radius), Length.FromMeters(Inside)),
        Axis = [.. axis ?? [0, 0, 1]],
        Outlet = hasOutlet ? new(dipTube, null, null, null, null) : null,
    };

    static DipTube Tube(double length = Inside - Floor, double[]? inlet = null, bool follows = false) => new(
        Length.FromMillimeters(10), Length.Zero, Length.FromMeters(length), [.. (inlet ?? []).Select(part => Length.FromMeters(part))], follows);

    [Theory]
    [InlineData(0, 0, -1, 0.03)] // upright: what is under the inlet
    [InlineData(0, 0, 1, 0.97)] // on the roof: all but what stands over the inlet, which is the gas's side
    [InlineData(1, 0, 0, 0.5)] // lying: half
    [InlineData(0, -2, 0, 0.5)] // and with twice the weight no other half
    public void A_straight_dip_tube_leaves_what_its_inlet_does_not_reach(double x, double y, double z, double part)
    {
        var place = BottlePlace.Of(Of(Tube()), new(x, y, z));

        Assert.Equal(part * Whole, place.VolumeBelowInlet, tolerance: 1e-15);
        Assert.Equal(Math.Sqrt(x * x + y * y + z * z), place.Gravity);
        Assert.False(place.DrawsAll);
        Assert.Empty(place.Assumptions);
    }

    [Fact]
    public void A_bottle_lies_by_its_axis_and_by_gravity_alike()
    {
        var leant = BottlePlace.Of(Of(Tube(), [Math.Sin(0.5), 0, Math.Cos(0.5)]), new(0, 0, -1));
        var shaken = BottlePlace.Of(Of(Tube()), new(Math.Sin(0.5), 0, -Math.Cos(0.5)));

        Assert.Equal(shaken.VolumeBelowInlet, leant.VolumeBelowInlet, tolerance: 1e-15);
        Assert.Equal(Inside * Math.Cos(0.5), leant.OutletHeight, tolerance: 1e-15);
        Assert.Equal(Floor * Math.Cos(0.5), leant.InletHeight, tolerance: 1e-15);
    }

    [Fact]
    public void Without_a_dip_tube_the_outlet_itself_draws_and_an_upright_bottle_gives_gas_first()
    {
        var upright = BottlePlace.Of(Of(null), new(0, 0, -1));
        var inverted = BottlePlace.Of(Of(null, [0, 0, -3]), new(0, 0, -1));

        Assert.Equal(Whole, upright.VolumeBelowInlet, tolerance: 1e-15);
        Assert.Equal(0, inverted.VolumeBelowInlet);
        Assert.Equal(-Inside, inverted.OutletHeight, tolerance: 1e-15);
    }

    [Fact]
    public void What_follows_the_liquid_and_what_is_not_described_draw_all_of_it()
    {
        foreach (var bottle in (Bottle[])[Of(Tube(follows: true, inlet: [0.05, 0, 0.1]), [0, 1, 0]), Of(null, [0, 1, 0], hasOutlet: false)])
        {
            var place = BottlePlace.Of(bottle, new(0, 0, -1));

            Assert.True(place.DrawsAll);
            Assert.Equal(0, place.VolumeBelowInlet);
            Assert.Equal(-Radius, place.InletHeight, tolerance: 1e-15);
            Assert.Empty(place.Assumptions);
        }
    }

    [Fact]
    public void Without_gravity_the_place_is_unknown_all_is_drawn_and_that_is_said()
    {
        var place = BottlePlace.Of(Of(Tube()), default);

        Assert.Null(place.Level);
        Assert.True(place.DrawsAll);
        Assert.Equal((0, 0, 0, 0), (place.Gravity, place.VolumeBelowInlet, place.InletHeight, place.OutletHeight));
        Assert.Equal("/supply/bottle", Assert.Single(place.Assumptions).Pointer);
    }

    // The axis to the left (y): up turns to the left about x, so the bottle's x stays forward and its y points down.
    [Theory]
    [InlineData(0, 1, 0, 0, -0.05, 0.05)]
    [InlineData(0, 1, 0, 0.05, 0, 0)]
    // To the front (x): the bottle's x points down, its y stays left.
    [InlineData(1, 0, 0, 0.05, 0, -0.05)]
    // Straight down, half a turn about x: x stays, y points right; gravity has none of either.
    [InlineData(0, 0, -1, 0.05, 0.05, -0.2)]
    public void An_inlet_to_one_side_turns_with_the_bottle(double axisX, double axisY, double axisZ, double inletX, double inletY, double height)
    {
        var place = BottlePlace.Of(Of(Tube(inlet: [inletX, inletY, 0.2]), [axisX, axisY, axisZ]), new(0, 0, -1));

        Assert.Equal(height, place.InletHeight, tolerance: 1e-15);
        Assert.Equal("/supply/bottle/outlet/dipTube/inlet", Assert.Single(place.Assumptions).Pointer);
    }

    [Fact]
    public void A_bottle_straight_down_is_turned_about_x()
    {
        var down = BottleAxes.Along(new(0, 0, -2));

        Assert.Equal(new BottleAxes(new(1, 0, 0), new(0, -1, 0), new(0, 0, -1)), down);
    }

    [Fact]
    public void Without_a_shape_it_is_three_diameters_long_or_as_long_as_its_dip_tube()
    {
        var usual = BottlePlace.Of(Of(Tube(0.1)) with { Shape = null }, new(0, 0, -1));
        var slender = BottlePlace.Of(Of(Tube(0.9)) with { Shape = null }, new(0, 0, -1));

        Assert.Equal(6 * usual.Radius, usual.Length, tolerance: 1e-15);
        Assert.Equal(Whole, Math.PI * usual.Radius * usual.Radius * usual.Length, tolerance: 1e-16);
        Assert.Equal(0.9, slender.Length);
        Assert.Equal(Whole, slender.Level!.Volume, tolerance: 1e-16);
        Assert.Equal(0, slender.InletHeight);
        Assert.All((BottlePlace[])[usual, slender], place => Assert.Equal(("/supply/bottle/shape", "common practice, no source"), (place.Assumptions[0].Pointer, place.Assumptions[0].Source)));
        Assert.Contains("three diameters long and of the stated volume: 393.3 mm long, 131.1 mm inside", usual.Assumptions[0].Value, StringComparison.Ordinal);
    }

    [Fact]
    public void A_shape_gives_its_length_and_the_volume_its_diameter()
    {
        var place = BottlePlace.Of(Of(Tube(), shape: new(Length.FromMillimeters(127), Length.FromMeters(Inside))), new(0, 0, -1));

        Assert.Equal(Inside, place.Length);
        Assert.Equal(Radius, place.Radius, tolerance: 1e-15);
        Assert.Equal("/supply/bottle/shape", Assert.Single(place.Assumptions).Pointer);
    }

    [Fact]
    public void A_dip_tube_longer_than_its_bottle_ends_at_the_base() =>
        Assert.Equal(0, BottlePlace.Of(Of(Tube(0.6)), new(0, 0, -1)).InletHeight);
}
