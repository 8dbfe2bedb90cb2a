using CsCheck;
using FlowCalc.Bottles;
using MathNet.Numerics.Integration;

namespace FlowCalc.Tests.Peers.Bottles;

/// <summary>Volume, surface and wall by the adaptive Gauss–Kronrod quadrature of the open library Math.NET Numerics, over random planes.</summary>
public class LiquidLevelPeerTests
{
    static readonly Gen<(double Slenderness, double Tilt, double Part)> Planes = Gen.Select(Gen.Double[0.3, 8], Gen.Double[0.02, Math.PI - 0.02], Gen.Double[0.02, 0.98]);

    [Fact]
    public void Volume_is_the_column_of_liquid_over_the_base() =>
        Planes.Where(plane => Math.Abs(Math.Cos(plane.Tilt)) > 0.01).Sample(
            (slenderness, tilt, part) =>
            {
                var level = new LiquidLevel(1, slenderness, new(Math.Sin(tilt), 0, Math.Cos(tilt)));
                var height = level.Lowest + part * (level.Highest - level.Lowest);

                // Across: x = −cos θ, so that the ends of the disc are smooth. What is below the plane is the lower part upright, the upper part on its head.
                var volume = OverTheDisc(height, slenderness, tilt, (theta, z) =>
                    (Math.Cos(tilt) > 0 ? z : slenderness - z) * 2 * Math.Sin(theta) * Math.Sin(theta));

                return Math.Abs(level.VolumeBelow(height) - volume) <= 1e-10 * level.Volume;
            },
            iter: 2_000);

    [Fact]
    public void Wall_is_the_wetted_part_of_every_line_along_the_shell_and_of_both_ends() =>
        Planes.Where(plane => Math.Abs(Math.Cos(plane.Tilt)) > 0.01).Sample(
            (slenderness, tilt, part) =>
            {
                var level = new LiquidLevel(1, slenderness, new(Math.Sin(tilt), 0, Math.Cos(tilt)));
                var height = level.Lowest + part * (level.Highest - level.Lowest);
                var below = Math.Cos(tilt) > 0;

                var wet = OverTheDisc(height, slenderness, tilt, (_, z) => 2 * (below ? z : slenderness - z))
                    + End(height, tilt) + End(height - slenderness * Math.Cos(tilt), tilt);

                var shell = 2 * Math.PI * (1 + slenderness);
                return Math.Abs(shell - wet - level.WallAreaAbove(height)) <= 1e-9 * shell;
            },
            iter: 2_000);

    static double OverTheDisc(double height, double length, double tilt, Func<double, double, double> of)
    {
        var (sine, cosine) = Math.SinCos(tilt);
        double Z(double theta) => Math.Clamp((height + Math.Cos(theta) * sine) / cosine, 0, length);
        // The plane cuts the ends where the column begins and ceases to be clipped: a rule must not cross these.
        var breaks = new[] { 0, Angle(height / sine), Angle((height - length * cosine) / sine), Math.PI };
        Array.Sort(breaks);
        return breaks.Zip(breaks[1..]).Sum(piece => piece.Second - piece.First < 1e-14 ? 0
            : GaussKronrodRule.Integrate(theta => of(theta, Z(theta)), piece.First, piece.Second, out _, out _, 1e-12, 20, 21));
    }

    // The part of an end below the plane, at the height that the plane has over the end's centre.
    static double End(double height, double tilt) =>
        GaussKronrodRule.Integrate(theta => 2 * Math.Sin(theta) * Math.Sin(theta), 0, Math.Max(1e-300, Angle(height / Math.Sin(tilt))), out _, out _, 1e-12, 20, 21);

    static double Angle(double x) => Math.Acos(-Math.Clamp(x, -1, 1));
}
