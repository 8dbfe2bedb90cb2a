using System.Collections.Immutable;
using FlowCalc.Mounts;
using FlowCalc.Tests.Mounts;

namespace FlowCalc.Tests.ClosedForms.Mounts;

/// <summary>Groups of bolts against the formulas about the centroid, and the worked examples of trade practice, worked out independently from them.</summary>
public class BoltGroupTests
{
    const double Exactly = 1e-9;

    static readonly ImmutableArray<(double X, double Y)> Six = [(0, 0), (0.12, 0), (0.24, 0.01), (0, 0.1), (0.12, 0.09), (0.24, 0.1)];

    // Figures of a script that went by the linear law with Ixy kept and in-plane torsion; sums of forces and moments checked there.
    [Fact]
    public void Six_bolts_out_of_line_bear_what_the_linear_law_gives()
    {
        var force = new Direction(1200, -800, 600);
        double[] pulls = [83.586338, -88.330171, -222.58065, 460.24668, 250.66414, 116.41366], shears = [252.72368, 245.09097, 237.01087, 243.6175, 236.62269, 228.29333];

        var shares = new BoltGroup(Six).Shares(new(0.14, 0.03, 0.075));

        for (var bolt = 0; bolt < 6; bolt++)
        {
            Assert.Equal(pulls[bolt], shares[bolt].AlongZ.Dot(force), tolerance: 1e-4);
            Assert.Equal(shears[bolt], shares[bolt].Shear(force), tolerance: 1e-4);
        }
    }

    [Fact]
    public void Loads_are_those_of_the_formulas_about_the_centroid()
    {
        var (force, point) = (new Direction(-310, 520, 900), new Direction(0.05, -0.02, 0.11));
        var shares = new BoltGroup(Six).Shares(point);

        var (cx, cy) = (Six.Average(at => at.X), Six.Average(at => at.Y));
        var r = new Direction(point.X - cx, point.Y - cy, point.Z);
        var (mx, my, mz) = (r.Y * force.Z - r.Z * force.Y, r.Z * force.X - r.X * force.Z, r.X * force.Y - r.Y * force.X);
        var (ixx, iyy, ixy) = (Six.Sum(at => Math.Pow(at.Y - cy, 2)), Six.Sum(at => Math.Pow(at.X - cx, 2)), Six.Sum(at => (at.X - cx) * (at.Y - cy)));
        var d = ixx * iyy - ixy * ixy;
        var (b, c, j) = ((-my * ixx - mx * ixy) / d, (mx * iyy + my * ixy) / d, ixx + iyy);
        for (var bolt = 0; bolt < Six.Length; bolt++)
        {
            var (x, y) = (Six[bolt].X - cx, Six[bolt].Y - cy);
            Assert.Equal(force.Z / 6 + b * x + c * y, shares[bolt].AlongZ.Dot(force), tolerance: 900 * Exactly);
            Assert.Equal(force.X / 6 - mz * y / j, shares[bolt].AlongX.Dot(force), tolerance: 900 * Exactly);
            Assert.Equal(force.Y / 6 + mz * x / j, shares[bolt].AlongY.Dot(force), tolerance: 900 * Exactly);
        }
    }

    // F·√(1/16 + (h/2a)² + (h/2b)²): the sum of the squares of the pulls by the three parts of the force.
    [Theory]
    [InlineData("80 mm", 0.08, 1044.2575)]
    [InlineData("200 mm", 0.2, 2388.7388)]
    public void Worst_pull_of_a_rectangle_is_the_closed_form(string height, double metres, double newtons)
    {
        var result = MountedLayout.Solve(("/mount/centreOfMass/2", $"\"{height}\""));

        var force = 7.5 * 25 * 9.80665;
        var closed = force * Math.Sqrt(1.0 / 16 + Math.Pow(metres / 0.32, 2) + Math.Pow(metres / 0.18, 2));
        Assert.Equal(newtons, closed, tolerance: 1e-3);
        Assert.Equal(closed, result.Case("any").Bolts.Max(bolt => bolt.Pull.Newtons), tolerance: closed * Exactly);
        Assert.Equal(closed / 11_600, result.Worst(MountCheckKind.BoltProof).Use, tolerance: Exactly);
    }

    [Fact]
    public void Bottle_on_four_bolts_is_the_worked_example()
    {
        var result = MountedLayout.Solve();

        Assert.Equal(1838.7469, result.Case("any").Force.Newtons, tolerance: 1e-4);
        Assert.Equal(459.68672, result.Case("any: forward").Bolts.Max(bolt => bolt.Shear.Newtons), tolerance: 1e-4);
        Assert.Equal(459.68672, result.Case("any: forward").Bolts.Max(bolt => bolt.Pull.Newtons), tolerance: 1e-4);
        Assert.Equal(817.22083, result.Case("any: to the left").Bolts.Max(bolt => bolt.Pull.Newtons), tolerance: 1e-4);
        Assert.Equal(459.68672, result.Case("any: up").Bolts.Max(bolt => bolt.Pull.Newtons), tolerance: 1e-4);
        Assert.Equal(0, result.Case("any: down").Bolts.Max(bolt => bolt.Pull.Newtons));
        // The example's own scan of 401 × 800 directions is good for a thousandth.
        Assert.Equal(0.12078182, result.Worst(MountCheckKind.BoltStrength).Use, tolerance: 1e-3 * 0.12);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    public void Bolts_in_one_line_are_not_whole(int bolts)
    {
        var group = new BoltGroup([.. Enumerable.Range(0, bolts).Select(bolt => (0.03 * bolt, 0.01 + 0.02 * bolt))]);

        Assert.False(group.IsWhole);
        Assert.Throws<InvalidOperationException>(() => group.Shares(new(0, 0, 0.1)));
        Assert.Throws<ArgumentException>(() => new BoltGroup([]));
    }
}
