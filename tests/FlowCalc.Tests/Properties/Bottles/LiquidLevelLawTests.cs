using CsCheck;
using FlowCalc.Bottles;

namespace FlowCalc.Tests.Properties.Bottles;

/// <summary>Laws of the liquid in a cylinder, over sizes and directions of every kind.</summary>
public class LiquidLevelLawTests
{
    /// <summary>Tilts over the whole sphere, and ones so near to upright and to lying that the formulas hand over.</summary>
    internal static readonly Gen<double> Tilt = Gen.OneOf(
        Gen.Double[0, Math.PI],
        Gen.Double[-17, -1].Select(power => Math.Pow(10, power)),
        Gen.Double[-17, -1].Select(power => Math.PI / 2 - Math.Pow(10, power)),
        Gen.Double[-17, -1].Select(power => Math.PI / 2 + Math.Pow(10, power)),
        Gen.Double[-8, -1].Select(power => Math.PI - Math.Pow(10, power)),
        Gen.OneOf(Gen.Const(0.0), Gen.Const(Math.PI / 2), Gen.Const(Math.PI)));

    internal static readonly Gen<(double Radius, double Length, Direction Up)> Bottle =
        Gen.Select(Gen.Double[-3, 1], Gen.Double[-1.5, 1.5], Tilt, Gen.Double[0, 2 * Math.PI], (size, slenderness, tilt, around) =>
            (Math.Pow(10, size), Math.Pow(10, size + slenderness), Towards(tilt, around)));

    internal static Direction Towards(double tilt, double around) =>
        new(Math.Sin(tilt) * Math.Cos(around), Math.Sin(tilt) * Math.Sin(around), Math.Cos(tilt));

    [Fact]
    public void The_height_of_a_volume_has_that_volume_below_it() =>
        Gen.Select(Bottle, Gen.OneOf(Gen.Double[0, 1], Gen.Double[-14, 0].Select(power => Math.Pow(10, power)))).Sample(
            (bottle, part) =>
            {
                var level = new LiquidLevel(bottle.Radius, bottle.Length, bottle.Up);
                var volume = part * level.Volume;

                var height = level.HeightOf(volume);

                // A height is known to the last digits of the bottle's size, and the volume to what they hold.
                var hair = 1e-14 * (bottle.Radius + bottle.Length);
                return level.VolumeBelow(height - hair) <= volume + 1e-14 * level.Volume && level.VolumeBelow(height + hair) >= volume - 1e-14 * level.Volume
                    && height >= level.Lowest && height <= level.Highest;
            },
            iter: 200_000);

    [Fact]
    public void More_liquid_stands_higher() =>
        Gen.Select(Bottle, Gen.Double[0, 1], Gen.Double[-12, 0]).Sample(
            (bottle, part, more) =>
            {
                var level = new LiquidLevel(bottle.Radius, bottle.Length, bottle.Up);
                var (low, high) = (part * level.Volume, Math.Min(1, part + Math.Pow(10, more)) * level.Volume);

                return level.HeightOf(high) >= level.HeightOf(low) - 1e-14 * (bottle.Radius + bottle.Length);
            },
            iter: 100_000);

    [Fact]
    public void Surface_is_the_slope_of_the_volume() =>
        Gen.Select(Bottle, Gen.Double[0.001, 0.999]).Sample(
            (bottle, part) =>
            {
                var level = new LiquidLevel(bottle.Radius, bottle.Length, bottle.Up);
                var range = level.Highest - level.Lowest;
                var (height, step) = (level.Lowest + part * range, 1e-5 * range);

                var slope = (level.VolumeBelow(height + step) - level.VolumeBelow(height - step)) / (2 * step);

                // Where a plane begins to cut an end, the slope bends within the step: its mean then lies between those of the two sides.
                double[] areas = [level.SurfaceArea(height - step), level.SurfaceArea(height), level.SurfaceArea(height + step)];
                var slack = 1e-6 * level.Volume / range;
                return slope >= areas.Min() - slack && slope <= areas.Max() + slack;
            },
            iter: 100_000);

    [Fact]
    public void What_is_below_one_plane_is_above_its_mirror_image() =>
        Gen.Select(Bottle, Gen.Double[0, 1]).Sample(
            (bottle, part) =>
            {
                var level = new LiquidLevel(bottle.Radius, bottle.Length, bottle.Up);
                var height = level.Lowest + part * (level.Highest - level.Lowest);

                return Math.Abs(level.VolumeBelow(height) + level.VolumeBelow(level.Lowest + level.Highest - height) - level.Volume) <= 1e-13 * level.Volume;
            },
            iter: 100_000);

    [Fact]
    public void A_bottle_turned_end_for_end_holds_the_same_above_the_floor() =>
        Gen.Select(Bottle, Gen.Double[0.001, 0.999]).Sample(
            (bottle, part) =>
            {
                var level = new LiquidLevel(bottle.Radius, bottle.Length, bottle.Up);
                var turned = new LiquidLevel(bottle.Radius, bottle.Length, new(bottle.Up.X, bottle.Up.Y, -bottle.Up.Z));
                var above = part * (level.Highest - level.Lowest);

                return Math.Abs(level.VolumeBelow(level.Lowest + above) - turned.VolumeBelow(turned.Lowest + above)) <= 1e-13 * level.Volume
                    && Math.Abs(level.WallAreaAbove(level.Lowest + above) - turned.WallAreaAbove(turned.Lowest + above)) <= 1e-12 * level.WallAreaAbove(level.Lowest);
            },
            iter: 100_000);

    [Fact]
    public void Dry_and_wet_wall_of_mirror_images_make_the_shell() =>
        Gen.Select(Bottle, Gen.Double[0.001, 0.999]).Sample(
            (bottle, part) =>
            {
                var level = new LiquidLevel(bottle.Radius, bottle.Length, bottle.Up);
                var height = level.Lowest + part * (level.Highest - level.Lowest);
                var shell = 2 * Math.PI * bottle.Radius * (bottle.Radius + bottle.Length);

                return Math.Abs(level.WallAreaAbove(height) + level.WallAreaAbove(level.Lowest + level.Highest - height) - shell) <= 1e-12 * shell
                    && Math.Abs(level.WallAreaAbove(level.Lowest) - shell) <= 1e-14 * shell && level.WallAreaAbove(level.Highest) == 0;
            },
            iter: 100_000);

    [Fact]
    public void The_direction_around_the_axis_does_not_matter() =>
        Gen.Select(Gen.Double[0, Math.PI], Gen.Double[0, 2 * Math.PI], Gen.Double[0, 1]).Sample(
            (tilt, around, part) =>
            {
                var (one, other) = (new LiquidLevel(0.07, 0.3, Towards(tilt, 0)), new LiquidLevel(0.07, 0.3, Towards(tilt, around)));

                return Math.Abs(one.HeightOf(part * one.Volume) - other.HeightOf(part * one.Volume)) <= 1e-13;
            },
            iter: 20_000);
}
