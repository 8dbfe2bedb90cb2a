using CsCheck;
using FlowCalc.Workbench.Charts;
using OxyPlot;

namespace FlowCalc.Workbench.Tests.Charts;

public sealed class LineThinningTests
{
    static readonly Gen<DataPoint[]> Lines = Gen.Select(Gen.Double[0, 1], Gen.Double[-5, 5]).Array[1, 400]
        .Select(steps =>
        {
            // Some steps take no time: jumps.
            var x = 0.0;
            return steps.Select(step => new DataPoint(x += step.Item1 < 0.3 ? 0 : step.Item1, step.Item2)).ToArray();
        });

    [Fact]
    public void Thinned_line_keeps_ends_and_extremes_and_has_only_points_of_the_line() =>
        Gen.Select(Lines, Gen.Int[1, 50], Gen.Double[0, 3]).Sample((line, columns, grain) =>
        {
            var thin = LineThinning.Of(line, columns, grain);
            return thin[0].Equals(line[0]) && thin[^1].Equals(line[^1]) && thin.Max(point => point.Y) == line.Max(point => point.Y) && thin.Min(point => point.Y) == line.Min(point => point.Y)
                && thin.All(line.Contains) && thin.Count <= Math.Max(4 * columns, 2);
        }, iter: 3_000);

    [Fact]
    public void Points_are_left_out_where_that_cannot_be_seen_alone() =>
        Gen.Select(Lines, Gen.Double[0.01, 3]).Sample((line, grain) =>
        {
            // As many columns as separate every two instants: then the grain alone thins.
            var thin = LineThinning.Of(line, 1_000_000, grain);
            return line.All(point => Enumerable.Range(1, thin.Count - 1).Any(at => Covers(thin[at - 1], thin[at], point, grain)) || line.Length == 1);
        }, iter: 1_000);

    static bool Covers(DataPoint a, DataPoint b, DataPoint point, double grain)
    {
        if (point.X < a.X || point.X > b.X) return false;
        if (b.X > a.X) return Math.Abs(a.Y + (b.Y - a.Y) * (point.X - a.X) / (b.X - a.X) - point.Y) <= grain + 1e-9;
        return point.Y >= Math.Min(a.Y, b.Y) - grain - 1e-9 && point.Y <= Math.Max(a.Y, b.Y) + grain + 1e-9;
    }
}
