using FlowCalc.Mounts;
using FlowCalc.Tests.Mounts;

namespace FlowCalc.Tests.ClosedForms.Mounts;

/// <summary>Straps and plates against closed forms and the worked examples of trade practice.</summary>
public class StrapAndPlateTests
{
    const string TwoStraps = """
        [{ "at": "-90 mm", "width": "20 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "500 N", "wrap": "180°", "tightened": "both-ends" },
         { "at": "90 mm", "width": "20 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "500 N", "wrap": "180°", "tightened": "both-ends" }]
        """;

    [Fact]
    public void Friction_of_two_straps_holds_the_worked_example_and_not_the_bottle()
    {
        var result = MountedLayout.Solve(("/mount/straps", TwoStraps), ("/mount/friction", "0.2"), ("/mount/loads/0/direction", "[1, 0, 0]"));

        Assert.Equal(1028.3185, result.Hold!.Value.Newtons, tolerance: 1e-3);
        var slip = result.Worst(MountCheckKind.Slip);
        Assert.Equal(MountPart.OutletEnd, slip.Part);
        Assert.Equal(1838.7469 / 1028.3185, slip.Use, tolerance: 1e-6);
    }

    // Lifted off the cradle by n and thrown along the axis by a, friction μ·(H/μ − F·n) has to hold F·a: worst at tan = μ, by √(1 + μ²).
    [Fact]
    public void Worst_slip_lifts_the_bottle_as_well()
    {
        var result = MountedLayout.Solve(("/mount/straps", TwoStraps), ("/mount/friction", "0.2"));

        Assert.Equal(1838.7469 / 1028.3185 * Math.Sqrt(1 + 0.04), result.Worst(MountCheckKind.Slip).Use, tolerance: 1e-6);
    }

    [Fact]
    public void Legs_of_two_straps_bear_a_quarter_of_the_force_off_the_cradle_each()
    {
        var result = MountedLayout.Solve(("/mount/straps", TwoStraps), ("/mount/loads/0/direction", "[0, 0, 1]"));

        Assert.All(result.StrapTensions, tension => Assert.Equal(459.68672 + 500, tension.Newtons, tolerance: 1e-4));
        Assert.Equal((459.68672 + 500) / (0.02 * 0.0008) / 210e6, result.Worst(MountCheckKind.StrapTension).Use, tolerance: 1e-6);
    }

    // n + k·h, k = 1/tan 45°: worst at 45° to the side, √2 of the pull straight off.
    [Fact]
    public void Worst_pull_on_a_strap_is_square_to_the_cradles_edge()
    {
        var result = MountedLayout.Solve(("/mount/straps", TwoStraps), ("/mount/cradle", "\"90°\""));

        Assert.All(result.StrapTensions, tension => Assert.Equal(459.68672 * Math.Sqrt(2) + 500, tension.Newtons, tolerance: 1e-4));
    }

    [Fact]
    public void Strap_nearer_to_the_centre_of_mass_takes_more()
    {
        var result = MountedLayout.Solve(("/mount/straps", TwoStraps.Replace("\"-90 mm\"", "\"-30 mm\"", StringComparison.Ordinal)), ("/mount/loads/0/direction", "[0, 0, 1]"));

        // By moments: 90/120 and 30/120 of the force, half of it a leg.
        Assert.Equal([500 + 1838.7469 * 0.75 / 2, 500 + 1838.7469 * 0.25 / 2], result.StrapTensions.Select(tension => Math.Round(tension.Newtons, 3)), (a, b) => Math.Abs(a - b) < 1e-2);
    }

    [Theory]
    [InlineData(0.1, 3)]
    [InlineData(0.3, 2.2)]
    public void Pressing_of_a_strap_tightened_at_one_end_is_the_integral_of_the_belt_equation(double friction, double wrap)
    {
        const int parts = 2_000;
        var sum = Enumerable.Range(0, parts).Sum(part => Math.Exp(-friction * wrap * (part + 0.5) / parts)) * wrap / parts;

        Assert.Equal(sum, StrapStatics.Pressing(friction, wrap, isTightenedBothEnds: false), tolerance: 1e-6);
        Assert.Equal(wrap, StrapStatics.Pressing(1e-12, wrap, isTightenedBothEnds: false), tolerance: 1e-9);
    }

    // Uniform load at the whole disc: at the rim q·a²/8, in the middle (1 + ν)·q·a²/16 (Timoshenko), with q·π·a² = 1.
    [Fact]
    public void Disc_loaded_all_over_is_the_clamped_disc_under_even_pressure()
    {
        const double a = 0.08, t = 0.0015;

        Assert.Equal(6 / (8 * Math.PI) / (t * t), PlateBending.ClampedDisc(2 * a, 2 * a, t), tolerance: 1);
    }

    // Q·n and F·m − Q·n are the moments at bolt and bend of a strip solved as a beam: slope of the outer span Q·n·n/3EI, of the inner (F·m − 2·Q·n)·m/2EI.
    [Theory]
    [InlineData(0.014, 0.012)]
    [InlineData(0.02, 0.024)]
    public void Prying_lets_both_spans_of_the_foot_lean_alike_at_the_bolt(double m, double n)
    {
        var q = PlateBending.Prying(m, n);

        Assert.Equal(q * n * n / 3, (m - 2 * q * n) * m / 2, tolerance: 1e-12);
        Assert.Equal(6 * Math.Max(q * n, m - q * n) / (0.04 * 0.003 * 0.003), PlateBending.Foot(m, n, 0.04, 0.003), tolerance: 1);
    }

    // By search and by the Gram matrix: two ways to the same greatest shear.
    [Fact]
    public void Greatest_shear_of_a_bolt_is_found_by_search_as_well()
    {
        var share = new BoltGroup([(0, 0), (0.12, 0), (0.24, 0.01), (0, 0.1)]).Shares(new(0.3, -0.1, 0.07))[2];

        var (_, searched, _) = WorstDirection.Of(share.Shear, TestContext.Current.CancellationToken);
        var (direction, known, _) = new LoadMeasure([(share.AlongX, share.AlongY)]).Peak(TestContext.Current.CancellationToken);

        Assert.Equal(known, searched, tolerance: known * 1e-8);
        Assert.Equal(known, share.Shear(direction), tolerance: known * 1e-12);
    }

    [Fact]
    public void Thrust_of_an_open_outlet_is_twice_pressure_times_area() => Assert.Equal(219.91149, MountedLayout.Solve().Thrust!.Value.Newtons, tolerance: 1e-4);

    // A spacer of length L bends its bolt by F·L/2.
    [Fact]
    public void Spacer_bends_its_bolts_by_half_its_length()
    {
        var result = MountedLayout.Solve(("/mount/spacers", "\"10 mm\""), ("/mount/loads/0/direction", "[1, 0, 0]"), ("/mount/centreOfMass/2", "\"0 mm\""));

        var d = Math.Sqrt(4 / Math.PI * 20.1e-6);
        var (shear, bending) = (459.68672, 459.68672 * 0.005 / (Math.PI / 32 * d * d * d));
        Assert.Equal(Math.Sqrt(bending * bending + 3 * Math.Pow(shear / 20.1e-6, 2)) / 580e6, result.Worst(MountCheckKind.BoltBending).Use, tolerance: 1e-6);
    }
}
