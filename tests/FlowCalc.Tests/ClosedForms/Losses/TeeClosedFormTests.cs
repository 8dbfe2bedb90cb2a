using FlowCalc.Losses;

namespace FlowCalc.Tests.ClosedForms.Losses;

public class TeeClosedFormTests
{
    public static TheoryData<double> Shares => [0, 0.1, 0.25, 0.5, 0.75, 0.9, 1];

    [Theory]
    [MemberData(nameof(Shares))]
    public void Run_leg_is_the_form_in_the_outlets_share(double q)
    {
        var w = 1 - q;
        var smooth = 0.62 * w * w - 0.98 * w + 0.36 + 0.03 * Math.Pow(w, 8);

        Assert.Equal(smooth, RunFedTee.Run(q, TeeBody.Smooth), tolerance: 1e-14);
        Assert.Equal(smooth + 0.87 * w * w, RunFedTee.Run(q, TeeBody.Threaded), tolerance: 1e-14);
        Assert.Equal(smooth, RunFedTeeShape.Run(TeeBody.Smooth).Loss(w * 3, 3).Loss / 9, tolerance: 1e-14);
    }

    [Theory]
    [MemberData(nameof(Shares))]
    public void Branch_leg_is_the_form_in_the_branchs_share(double q)
    {
        const double beta = 0.7, edge = 0.1;
        var sharp = 0.57 - 1.07 * Math.Sqrt(edge) - 2.13 * edge + 8.24 * Math.Pow(edge, 1.5) - 8.48 * edge * edge + 2.90 * Math.Pow(edge, 2.5);
        var smooth = 0.81 * q * q - 1.13 * q + 1 + q * q / Math.Pow(beta, 4) * (1.12 * beta - 1.08 * Math.Pow(beta, 3) + sharp);

        Assert.Equal(smooth, RunFedTee.Branch(q, beta, edge, TeeBody.Smooth), tolerance: 1e-14);
        Assert.Equal(smooth + 1.1 * q * q, RunFedTee.Branch(q, beta, edge, TeeBody.Threaded), tolerance: 1e-14);
        Assert.Equal(smooth, RunFedTeeShape.Branch(beta, edge, TeeBody.Smooth).Loss(q * 3, 3).Loss / 9, tolerance: 1e-14);
    }

    [Theory]
    [MemberData(nameof(Shares))]
    public void Bullhead_leg_is_the_form_in_the_velocity_ratio(double q)
    {
        const double boreRatio = 0.8;
        var velocityRatio = q / (boreRatio * boreRatio);

        Assert.Equal(1 + 0.3 * velocityRatio * velocityRatio, BullheadTee.Coefficient(q, boreRatio, TeeBody.Smooth), tolerance: 1e-14);
        Assert.Equal(1 + 1.5 * velocityRatio * velocityRatio, BullheadTee.Coefficient(q, boreRatio, TeeBody.Threaded), tolerance: 1e-14);
    }

    [Fact]
    public void Solvers_coefficients_are_those_of_the_equal_sharp_tee()
    {
        Assert.Equal(new TeeLeg(0.62, -0.98, 0.36, 0.03), RunFedTeeShape.Run(TeeBody.Smooth));

        var branch = RunFedTeeShape.Branch(1, 0, TeeBody.Smooth);
        Assert.Equal(0.81 + 1.12 - 1.08 + 0.57, branch.Own, tolerance: 1e-14);
        Assert.Equal((-1.13, 1.0, 0.0), (branch.Mixed, branch.Inlet, branch.Eighth));

        Assert.Equal(new TeeLeg(0.3, 0, 1, 0), BullheadTee.Outlet(1, TeeBody.Smooth));
    }

    // The bracket of the form for a rounded edge, read at the branch's own head: its printed values.
    [Theory]
    [InlineData(0, 0.57)]
    [InlineData(0.05, 0.297)]
    [InlineData(0.1, 0.204)]
    [InlineData(0.5, 0.054)]
    [InlineData(1, 0.03)]
    [InlineData(7, 0.03)]
    public void Rounded_edge_lowers_the_branch_as_tabulated_and_no_further_than_one_bore(double edge, double tabulated) =>
        Assert.Equal(tabulated, RunFedTeeShape.Branch(1, edge, TeeBody.Smooth).Own - 0.85, tolerance: 5e-4);

    [Fact]
    public void Vanishing_branch_is_a_flush_entrance_on_its_own_head()
    {
        const double beta = 1e-4;

        Assert.Equal(TubeInlet.SquareCut, RunFedTeeShape.Branch(beta, 0, TeeBody.Smooth).Own * Math.Pow(beta, 4), tolerance: 2e-4);
    }

    [Fact]
    public void Branch_wider_than_the_run_adds_a_sudden_expansion()
    {
        const double beta = 1.25;
        var rest = 1 - 1 / (beta * beta);

        var difference = RunFedTee.Branch(0.6, beta, 0, TeeBody.Smooth) - RunFedTee.Branch(0.6, 1, 0, TeeBody.Smooth);

        Assert.Equal(rest * rest * 0.36, difference, tolerance: 1e-14);
    }

    [Fact]
    public void One_outlet_of_a_bullhead_shut_is_a_sharp_turn()
    {
        Assert.Equal(Mitre.Coefficient(Math.PI / 2), BullheadTee.Coefficient(1, 1, TeeBody.Smooth), tolerance: 0.1);
        Assert.Equal(RunFedTee.Branch(1, 1, 0, TeeBody.Smooth), BullheadTee.Coefficient(1, 1, TeeBody.Smooth), tolerance: 0.011);
    }

    [Theory]
    [InlineData(1, 0, true)]
    [InlineData(1.001, 0, false)]
    [InlineData(0.4, 1, true)]
    [InlineData(0.4, 1.1, false)]
    [InlineData(0, 0, false)]
    [InlineData(1, -0.1, false)]
    public void Correlation_covers_what_it_says(double boreRatio, double edge, bool expected) =>
        Assert.Equal(expected, RunFedTee.IsInRange(boreRatio, edge));

    [Theory]
    [InlineData(1, true)]
    [InlineData(1.001, false)]
    [InlineData(0, false)]
    public void Bullhead_correlation_covers_outlets_no_wider_than_the_inlet(double boreRatio, bool expected) =>
        Assert.Equal(expected, BullheadTee.IsInRange(boreRatio));

    [Fact]
    public void Dead_tee_loses_nothing() => Assert.Equal((0, 0, 0), RunFedTeeShape.Run(TeeBody.Smooth).Loss(0, 0));

    [Fact]
    public void All_flow_in_the_run_has_the_slopes_of_a_dividing_tee()
    {
        var (_, byOwn, byInlet) = RunFedTeeShape.Run(TeeBody.Smooth).Loss(1, 1);

        Assert.Equal(2 * 0.62 - 0.98 + 8 * 0.03, byOwn, tolerance: 1e-14);
        Assert.Equal(-0.98 + 2 * 0.36 - 6 * 0.03, byInlet, tolerance: 1e-14);
    }

    [Fact]
    public void Trial_flow_above_the_inlets_holds_the_last_term_at_a_ratio_of_one()
    {
        var (loss, byOwn, byInlet) = RunFedTeeShape.Run(TeeBody.Smooth).Loss(2, 1);

        Assert.Equal(0.62 * 4 - 0.98 * 2 + 0.36 + 0.03 * 4, loss, tolerance: 1e-14);
        Assert.Equal(0.62 * 4 - 0.98 + 0.03 * 4, byOwn, tolerance: 1e-14);
        Assert.Equal(-0.98 * 2 + 0.36 * 2, byInlet, tolerance: 1e-14);
    }
}
