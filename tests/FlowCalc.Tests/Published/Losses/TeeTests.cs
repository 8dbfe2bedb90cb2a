using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>
/// Tees against other authors: comparisons that hold the stated scatter, since no two agree. G. Vogel, Munich tee experiments 1926–28 (43 mm, sharp,
/// 90°): from memory, the values at q of 0.6 and more also seen in an industrial tube-fitting catalogue. I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., tables 7-4 and 7-20, as
/// quoted by an open Modelica loss library. Screwed and flanged tees: HVAC Pump Handbook, McGraw-Hill 2006, table 3.10 (seen).
/// </summary>
public class TeeTests
{
    [Theory]
    [InlineData(0.0, 0.95, 0.04, TestDisplayName = "Vogel tee with a branch share of 0 lies within the stated scatter")]
    [InlineData(0.2, 0.88, -0.08, TestDisplayName = "Vogel tee with a branch share of 0.2 lies within the stated scatter")]
    [InlineData(0.4, 0.89, -0.05, TestDisplayName = "Vogel tee with a branch share of 0.4 lies within the stated scatter")]
    [InlineData(0.6, 0.95, 0.07, TestDisplayName = "Vogel tee with a branch share of 0.6 lies within the stated scatter")]
    [InlineData(0.8, 1.10, 0.21, TestDisplayName = "Vogel tee with a branch share of 0.8 lies within the stated scatter")]
    [InlineData(1.0, 1.28, 0.35, TestDisplayName = "Vogel tee with a branch share of 1 lies within the stated scatter")]
    public void Smooth_tee_stays_within_the_stated_scatter_of_Vogel(double share, double branch, double run)
    {
        Assert.Equal(branch, RunFedTee.Branch(share, 1, 0, TeeBody.Smooth), tolerance: 0.13);
        Assert.Equal(run, RunFedTee.Run(share, TeeBody.Smooth), tolerance: 0.06);
    }

    [Theory]
    [InlineData(0.25, 0.903125, -0.0625, TestDisplayName = "Idelchik tee with a branch share of 0.25 lies within the stated scatter")]
    [InlineData(0.5, 0.875, 0, TestDisplayName = "Idelchik tee with a branch share of 0.5 lies within the stated scatter")]
    [InlineData(0.75, 0.9375, 0.084375, TestDisplayName = "Idelchik tee with a branch share of 0.75 lies within the stated scatter")]
    [InlineData(1, 1.2, 0.3, TestDisplayName = "Idelchik tee with a branch share of 1 lies within the stated scatter")]
    public void Smooth_tee_stays_within_the_stated_scatter_of_Idelchik(double share, double branch, double run)
    {
        Assert.Equal(branch, RunFedTee.Branch(share, 1, 0, TeeBody.Smooth), tolerance: 0.12);
        Assert.Equal(run, RunFedTee.Run(share, TeeBody.Smooth), tolerance: 0.08);
    }

    // One K a size and no division of the flow given: 35 %, and 30 % for the flanged tee.
    [Theory]
    [InlineData(2.4, TestDisplayName = "Screwed tee of 1/2 in, all flow to the branch, lies within the stated spread")]
    [InlineData(2.1, TestDisplayName = "Screwed tee of 3/4 in, all flow to the branch, lies within the stated spread")]
    [InlineData(1.9, TestDisplayName = "Screwed tee of 1 in, all flow to the branch, lies within the stated spread")]
    public void Threaded_tee_stays_within_the_stated_spread_of_screwed_tees(double handbook)
    {
        Assert.Equal(handbook, RunFedTee.Branch(1, 1, 0, TeeBody.Threaded), tolerance: 0.35 * handbook);
        Assert.Equal(handbook, BullheadTee.Coefficient(1, 1, TeeBody.Threaded), tolerance: 0.35 * handbook);
    }

    [Fact]
    public void Threaded_tee_with_all_flow_in_the_run_meets_the_screwed_tee_it_was_fitted_to() =>
        Assert.Equal(0.90, RunFedTee.Run(0, TeeBody.Threaded), tolerance: 0.005); // the handbook's 0.90, two figures

    [Fact]
    public void Smooth_tee_with_all_flow_to_the_branch_lies_within_the_stated_spread_of_a_flanged_tee() =>
        Assert.Equal(1.0, RunFedTee.Branch(1, 1, 0, TeeBody.Smooth), tolerance: 0.3);
}
