using FlowCalc.Studies.Sampling;
using MathNet.Numerics.Statistics;

namespace FlowCalc.Tests.Peers.Studies;

/// <summary>Against MathNet.Numerics' statistics of unsorted data, which go another way than those of sorted arrays.</summary>
public class SampleSummaryTests
{
    [Fact]
    public void Figures_are_those_of_the_library()
    {
        var random = new Random(1);
        double[] values = [.. Enumerable.Range(0, 1_237).Select(_ => Math.Exp(random.NextDouble() * 3))];

        var summary = SampleSummary.Of(2.5, values);

        Assert.Equal(values.Mean(), summary.Mean!.Value, tolerance: 1e-12);
        Assert.Equal(values.StandardDeviation(), summary.StandardDeviation!.Value, tolerance: 1e-12);
        Assert.Equal(values.Minimum(), summary.Least);
        Assert.Equal(values.QuantileCustom(0.05, QuantileDefinition.R8), summary.P05!.Value, tolerance: 1e-12);
        Assert.Equal(values.Median(), summary.P50!.Value, tolerance: 1e-12);
        Assert.Equal(values.QuantileCustom(0.95, QuantileDefinition.R8), summary.P95!.Value, tolerance: 1e-12);
        Assert.Equal(values.Maximum(), summary.Greatest);
        Assert.Equal((2.5, 1_237, 0), (summary.Design, summary.Count, summary.Never));
    }

    [Fact]
    public void Instants_that_never_come_are_later_than_any_and_leave_no_mean()
    {
        double[] values = [.. Enumerable.Range(0, 100).Select(i => i < 90 ? 1.0 + i : double.PositiveInfinity)];

        var summary = SampleSummary.Of(double.PositiveInfinity, values);

        Assert.Equal((100, 10), (summary.Count, summary.Never));
        Assert.Equal(1, summary.Least);
        Assert.Equal(50.5, summary.P50!.Value, tolerance: 1e-12);
        Assert.Null(summary.P95);
        Assert.Null(summary.Mean);
        Assert.Null(summary.StandardDeviation);
        Assert.Null(summary.Greatest);
        Assert.Null(summary.Design);
    }

    [Fact]
    public void Samples_without_the_figure_do_not_count()
    {
        var summary = SampleSummary.Of(double.NaN, [double.NaN, 3, double.NaN, 5]);

        Assert.Equal(2, summary.Count);
        Assert.Equal(4, summary.Mean!.Value, tolerance: 1e-15);
        Assert.Equal(new SampleSummary(null, 0, 0, null, null, null, null, null, null, null), SampleSummary.Of(double.NaN, [double.NaN]));
    }
}
