using System.Collections.Immutable;
using CsCheck;
using FlowCalc.Mounts;

namespace FlowCalc.Tests.Properties.Mounts;

/// <summary>Laws of a group of bolts, whatever its places, force and arm.</summary>
public class BoltGroupLawTests
{
    const int Times = 400;

    static readonly Gen<Direction> Vector = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z) => new Direction(x, y, z));

    static readonly Gen<ImmutableArray<(double X, double Y)>> Places =
        Gen.Select(Gen.Double[-0.3, 0.3], Gen.Double[-0.3, 0.3]).Array[3, 12].Select(places => places.ToImmutableArray()).Where(places => new BoltGroup(places).IsWhole && Roundness(places) > 0.02);

    // Least over greatest second moment: a group nearly in line has loads as large as one likes, and no digits to hold laws to.
    static double Roundness(ImmutableArray<(double X, double Y)> places)
    {
        var (cx, cy) = (places.Average(at => at.X), places.Average(at => at.Y));
        var (xx, yy, xy) = (places.Sum(at => Math.Pow(at.X - cx, 2)), places.Sum(at => Math.Pow(at.Y - cy, 2)), places.Sum(at => (at.X - cx) * (at.Y - cy)));
        var (middle, reach) = ((xx + yy) / 2, Math.Sqrt(Math.Pow((xx - yy) / 2, 2) + xy * xy));
        return (middle - reach) / (middle + reach);
    }

    [Fact]
    public void Forces_and_moments_of_all_bolts_are_those_of_the_load() =>
        Gen.Select(Places, Vector, Vector).Sample((places, arm, force) =>
        {
            var shares = new BoltGroup(places).Shares(arm);
            var (sum, moment) = (new Direction(0, 0, 0), new Direction(0, 0, 0));
            for (var bolt = 0; bolt < places.Length; bolt++)
            {
                var on = new Direction(shares[bolt].AlongX.Dot(force), shares[bolt].AlongY.Dot(force), shares[bolt].AlongZ.Dot(force));
                (sum, moment) = (sum + on, moment + new Direction(places[bolt].X, places[bolt].Y, 0).Cross(on));
            }
            return Near(sum, force) && Near(moment, arm.Cross(force));
        }, iter: Times);

    [Fact]
    public void Turning_bolts_arm_and_force_about_the_normal_turns_the_loads() =>
        Gen.Select(Places, Vector, Vector, Gen.Double[0, 6.28]).Sample((places, arm, force, turn) =>
        {
            var shares = new BoltGroup(places).Shares(arm);
            var turned = new BoltGroup([.. places.Select(at => (Turned(new(at.X, at.Y, 0), turn).X, Turned(new(at.X, at.Y, 0), turn).Y))]).Shares(Turned(arm, turn));
            return Enumerable.Range(0, places.Length).All(bolt =>
                IsNear(shares[bolt].Pull(force), turned[bolt].Pull(Turned(force, turn))) && IsNear(shares[bolt].Shear(force), turned[bolt].Shear(Turned(force, turn))));
        }, iter: Times);

    [Fact]
    public void Order_of_the_bolts_does_not_matter() =>
        Gen.Select(Places, Vector, Vector).Sample((places, arm, force) =>
        {
            var (shares, back) = (new BoltGroup(places).Shares(arm), new BoltGroup([.. places.Reverse()]).Shares(arm));
            return Enumerable.Range(0, places.Length).All(bolt => IsNear(shares[bolt].Pull(force), back[^(bolt + 1)].Pull(force)) && IsNear(shares[bolt].Shear(force), back[^(bolt + 1)].Shear(force)));
        }, iter: Times);

    [Fact]
    public void Loads_grow_with_the_force() =>
        Gen.Select(Places, Vector, Vector, Gen.Double[0, 50]).Sample((places, arm, force, factor) =>
        {
            var shares = new BoltGroup(places).Shares(arm);
            return shares.All(share => IsNear(factor * share.Pull(force), share.Pull(factor * force), 50) && IsNear(factor * share.Shear(force), share.Shear(factor * force), 50));
        }, iter: Times);

    [Fact]
    public void Force_through_the_middle_of_a_ring_loads_its_bolts_alike() =>
        Gen.Select(Gen.Int[3, 10], Gen.Double[0.02, 0.3], Vector).Sample((bolts, radius, force) =>
        {
            var shares = new BoltGroup([.. Enumerable.Range(0, bolts).Select(bolt => (radius * Math.Cos(2 * Math.PI * bolt / bolts), radius * Math.Sin(2 * Math.PI * bolt / bolts)))]).Shares(new(0, 0, 0));
            return shares.All(share => IsNear(share.Pull(force), Math.Max(0, force.Z) / bolts) && IsNear(share.Shear(force), Math.Sqrt(force.X * force.X + force.Y * force.Y) / bolts));
        }, iter: Times);

    [Fact]
    public void No_direction_is_worse_than_the_worst_and_its_bound() =>
        Gen.Select(Places, Vector, Vector.Array[20]).Sample((places, arm, directions) =>
        {
            var share = new BoltGroup(places).Shares(arm)[0];
            double Use(Direction d) => BoltResistance.Together(share.Shear(d), share.Pull(d));
            var (worst, value, bound) = WorstDirection.Of(Use, TestContext.Current.CancellationToken);
            return value <= bound && bound <= value * (1 + 2 * WorstDirection.Tolerance) && IsNear(Use(worst), value)
                && directions.Where(d => d.Length > 0.1).All(d => Use(d.ToUnit()) <= bound * (1 + 1e-9));
        }, iter: Times / 4);

    static Direction Turned(Direction d, double turn) => new(d.X * Math.Cos(turn) - d.Y * Math.Sin(turn), d.X * Math.Sin(turn) + d.Y * Math.Cos(turn), d.Z);

    static bool Near(Direction a, Direction b) => IsNear(a.X, b.X) && IsNear(a.Y, b.Y) && IsNear(a.Z, b.Z);

    static bool IsNear(double a, double b, double scale = 1) => Math.Abs(a - b) <= 1e-8 * scale * Math.Max(1, Math.Abs(a));
}
