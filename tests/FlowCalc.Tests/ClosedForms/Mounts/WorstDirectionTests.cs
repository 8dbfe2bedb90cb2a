using FlowCalc.Mounts;

namespace FlowCalc.Tests.ClosedForms.Mounts;

/// <summary>The search over all directions against functions whose greatest value is known.</summary>
public class WorstDirectionTests
{
    static readonly Direction A = new(0.3, -1.2, 0.7), B = new(-0.4, 0.2, 1.1);

    [Fact]
    public void Greatest_of_a_plane_is_its_gradient()
    {
        var (direction, value, bound) = WorstDirection.Of(d => Math.Max(0, A.Dot(d)), TestContext.Current.CancellationToken);

        Assert.Equal(A.Length, value, tolerance: 1e-9);
        Assert.InRange(direction.AngleTo(A), 0, 1e-4);
        Assert.InRange(bound, value, value * (1 + WorstDirection.Tolerance));
    }

    // |A·d| and |B·d| as the sides of a right angle: the root of the larger eigenvalue of A·Aᵀ + B·Bᵀ, by hand from its trace and minor.
    [Fact]
    public void Greatest_shear_is_the_root_of_the_largest_eigenvalue()
    {
        var (_, value, bound) = WorstDirection.Of(d => Math.Sqrt(A.Dot(d) * A.Dot(d) + B.Dot(d) * B.Dot(d)), TestContext.Current.CancellationToken);

        var (aa, bb, ab) = (A.Dot(A), B.Dot(B), A.Dot(B));
        var known = Math.Sqrt((aa + bb) / 2 + Math.Sqrt(Math.Pow((aa - bb) / 2, 2) + ab * ab));
        Assert.Equal(known, value, tolerance: known * 1e-8);
        Assert.InRange(known, 0, bound);
    }

    [Fact]
    public void Greatest_of_a_corner_is_the_sum_of_two_planes()
    {
        var (_, value, _) = WorstDirection.Of(d => Math.Abs(A.Dot(d)) + Math.Abs(B.Dot(d)), TestContext.Current.CancellationToken);

        var known = Math.Max((A + B).Length, (A - B).Length);
        Assert.Equal(known, value, tolerance: known * 1e-8);
    }

    [Fact]
    public void Same_in_every_direction_comes_to_an_end_within_its_bound()
    {
        var (_, value, bound) = WorstDirection.Of(d => d.Length, TestContext.Current.CancellationToken);

        Assert.Equal(1, value, tolerance: 1e-12);
        Assert.InRange(bound, 1, 1 + WorstDirection.Tolerance);
    }

    [Fact]
    public void Nothing_in_any_direction_is_nothing() => Assert.Equal(0, WorstDirection.Of(_ => 0, TestContext.Current.CancellationToken).Bound);
}
