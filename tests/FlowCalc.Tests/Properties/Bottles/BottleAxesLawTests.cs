using CsCheck;
using FlowCalc.Bottles;

namespace FlowCalc.Tests.Properties.Bottles;

/// <summary>Laws of the bottle's axes, for axes in every direction and close to straight down.</summary>
public class BottleAxesLawTests
{
    static readonly Gen<Direction> Axis = Gen.Select(LiquidLevelLawTests.Tilt, Gen.Double[0, 2 * Math.PI], Gen.Double[-5, 5], (tilt, around, size) =>
    {
        var (unit, length) = (LiquidLevelLawTests.Towards(tilt, around), Math.Pow(10, size));
        return new Direction(unit.X * length, unit.Y * length, unit.Z * length);
    });

    [Fact]
    public void They_are_at_right_angles_and_right_handed_and_z_is_the_axis() =>
        Axis.Sample(
            axis =>
            {
                var (x, y, z) = BottleAxes.Along(axis);

                return Near(x.Length, 1) && Near(y.Length, 1) && Near(z.Length, 1)
                    && Near(Dot(x, y), 0) && Near(Dot(y, z), 0) && Near(Dot(z, x), 0)
                    && Near(x.X * (y.Y * z.Z - y.Z * z.Y) + x.Y * (y.Z * z.X - y.X * z.Z) + x.Z * (y.X * z.Y - y.Y * z.X), 1)
                    && z.AngleTo(axis) < 2e-9;
            },
            iter: 100_000);

    // A rotation by φ has the trace 1 + 2 cos φ; the smallest one turns by the angle between z and the axis.
    [Fact]
    public void They_turn_by_no_more_than_the_axis_leans() =>
        Axis.Sample(
            axis =>
            {
                var (x, y, z) = BottleAxes.Along(axis);

                return Near(x.X + y.Y + z.Z, 1 + 2 * z.Z);
            },
            iter: 100_000);

    static double Dot(Direction a, Direction b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    static bool Near(double value, double wanted) => Math.Abs(value - wanted) < 1e-8;
}
