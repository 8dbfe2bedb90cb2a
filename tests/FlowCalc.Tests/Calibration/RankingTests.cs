using System.Collections.Immutable;
using FlowCalc.Calibration;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Tests.Flows;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Calibration;

public class RankingTests
{
    // Two runs in series between supply and tee: no reading of a nozzle tells a kink in one from a kink in the other.
    const string InSeries = """
        { "id": "joint", "kind": "reducer" }, { "id": "T", "kind": "tee", "fedThrough": "branch" }, { "id": "left", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }, { "id": "right", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }
        """;

    const string SeriesRuns = """
        { "id": "first", "from": "S", "to": "joint", "bore": "6 mm", "length": "1 m" }, { "id": "second", "from": "joint", "to": "T", "bore": "6 mm", "length": "2 m" },
        { "id": "to-left", "from": "T", "to": "left", "bore": "4 mm", "length": "2 m" }, { "id": "to-right", "from": "T", "to": "right", "bore": "4 mm", "length": "2.5 m" }
        """;

    static CalibrationJudgement Judge(Layout layout, CalibrationResult result) => CalibrationFindings.Judge(layout, result, UnitSystem.Metric, TestContext.Current.CancellationToken);

    [Fact]
    public void Runs_in_series_are_named_as_not_told_apart()
    {
        var layout = Planted.Tested(Documents.Read(Documents.Water(InSeries, SeriesRuns)), Planted.Kink("second", 300));
        layout = layout with { Measured = layout.Measured! with { Suspects = [CauseKind.Run] } };
        var result = Planted.Solve(layout);

        var (first, second) = (Planted.Of(result, CauseKind.Run, 0), Planted.Of(result, CauseKind.Run, 1));
        Assert.Equal(first.Score, second.Score, tolerance: 1e-6);
        Assert.Contains(result.Alike, cause => cause.Run is 0 or 1);
        var note = Judge(layout, result).Findings.Single(finding => finding.Code == CalibrationCodes.CauseNotCertain);
        Assert.Contains("do not tell", note.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_pressure_between_runs_in_series_tells_them_apart()
    {
        var layout = Planted.Tested(Documents.Read(Documents.Water(InSeries, SeriesRuns)), Planted.Kink("second", 300), points: "joint");
        layout = layout with { Measured = layout.Measured! with { Suspects = [CauseKind.Run] } };

        var result = Planted.Solve(layout);

        Assert.Equal(1, result.Best!.Run);
        Assert.DoesNotContain(result.Alike, cause => cause.Run == 0);
    }

    [Fact]
    public void Order_of_readings_points_and_runs_does_not_matter()
    {
        var layout = Planted.Tested(Planted.Demo, Planted.Kink("R8", 30), seed: 11);
        var readings = layout.Measured!.Readings;
        var turned = layout with { Measured = layout.Measured with { Readings = [.. readings.Reverse()] } };
        // Every point's index is counted from the other end, every run comes from there.
        int From(int point) => layout.Points.Length - 1 - point;
        var moved = layout with
        {
            Points = [.. layout.Points.Reverse()],
            Runs = [.. layout.Runs.Reverse().Select(run => run with { From = From(run.From), To = From(run.To) })],
            Measured = layout.Measured with { Readings = [.. readings.Select(reading => reading with { Point = From(reading.Point) })] },
        };

        var one = Planted.Solve(layout);
        foreach (var other in (Layout[])[turned, moved])
        {
            var result = Planted.Solve(other);
            Assert.Equal(layout.Runs[one.Best!.Run].Id, other.Runs[result.Best!.Run].Id);
            Assert.Equal(one.Best.Unknowns[0].Value, result.Best.Unknowns[0].Value, tolerance: 1e-6);
            Assert.Equal(one.Best.ChiSquare, result.Best.ChiSquare, tolerance: 1e-6);
        }
    }

    [Fact]
    public void Twice_the_uncertainty_gives_the_same_size_a_quarter_of_chi_square_and_twice_the_error()
    {
        var run = Planted.RunOf(Planted.Demo, "R8");
        // Where readings scatter more than stated Birge's ratio is at work, and the law is another.
        var layout = Enumerable.Range(1, 20).Select(seed => Planted.Tested(Planted.Demo, Planted.Kink("R8", 30), (ulong)seed))
            .First(one => Planted.Of(Planted.Solve(one), CauseKind.Run, run) is var fit && fit.ChiSquare < fit.DegreesOfFreedom);
        var loose = layout with { Measured = layout.Measured! with { Readings = [.. layout.Measured.Readings.Select(reading => reading with { Uncertainty = 2 * reading.Uncertainty })] } };

        var (sharp, dull) = (Planted.Of(Planted.Solve(layout), CauseKind.Run, run), Planted.Of(Planted.Solve(loose), CauseKind.Run, run));

        Assert.Equal(sharp.Unknowns[0].Value, dull.Unknowns[0].Value, tolerance: 1e-5);
        Assert.Equal(sharp.ChiSquare / 4, dull.ChiSquare, tolerance: 1e-6);
        Assert.Equal(2, dull.Unknowns[0].StandardError!.Value / sharp.Unknowns[0].StandardError!.Value, tolerance: 1e-4);
    }

    [Fact]
    public void A_reading_that_is_far_too_high_is_an_outlier_and_no_kink()
    {
        var layout = Planted.Tested(Planted.Demo, drawn => drawn, seed: 2);
        var readings = layout.Measured!.Readings;
        var driver = readings.IndexOf(readings.Single(reading => layout.Points[reading.Point].Id == "driver"));
        layout = layout with { Measured = layout.Measured with { Readings = readings.SetItem(driver, readings[driver] with { Value = 1.15 * readings[driver].Value }) } };

        var judged = Judge(layout, Planted.Solve(layout));

        var outlier = Assert.Single(judged.Findings, finding => finding.Code == CalibrationCodes.ReadingOutlier);
        Assert.Equal(["driver"], outlier.Where);
        Assert.Contains(judged.Findings, finding => finding.Code == CalibrationCodes.ReadingsDisagree);
        Assert.DoesNotContain(judged.Findings, finding => finding.Code is CalibrationCodes.LikelyKinkedRun or CalibrationCodes.LikelyBlockedRun);
    }

    [Fact]
    public void Limits_of_the_document_stand_before_the_defaults()
    {
        var layout = Planted.Tested(Planted.Demo, Planted.Kink("R8", 30), seed: 5);
        Limit Stated(string code, double warn, double fail) => new(code, null, new(warn, null), new(fail, null), null, "");

        var usual = Judge(layout, Planted.Solve(layout)).Findings.Single(finding => finding.Code == CalibrationCodes.LikelyKinkedRun);
        layout = layout with { Limits = [Stated(CalibrationCodes.LikelyKinkedRun, 0.01, 0.10)] };
        var strict = Judge(layout, Planted.Solve(layout)).Findings.Single(finding => finding.Code == CalibrationCodes.LikelyKinkedRun);
        layout = layout with { Limits = [Stated(CalibrationCodes.LikelyKinkedRun, 0.5, 0.9)] };
        var mild = Judge(layout, Planted.Solve(layout));

        Assert.Equal((Severity.Warn, Severity.Fail), (usual.Severity, strict.Severity));
        Assert.DoesNotContain(mild.Findings, finding => finding.Code == CalibrationCodes.LikelyKinkedRun);
    }

    [Fact]
    public void A_blocked_run_fails_and_so_does_the_system_as_built()
    {
        var layout = Planted.Tested(Planted.Demo, Planted.Kink("R2", 1e8), seed: 3);

        var judged = Judge(layout, Planted.Solve(layout));

        Assert.Equal(["R2"], Assert.Single(judged.Findings, finding => finding.Code == CalibrationCodes.LikelyBlockedRun).Where);
        var built = Assert.Single(judged.Findings, finding => finding.Code == CalibrationCodes.AsBuiltFails);
        Assert.True(judged.Built.Fails > judged.Drawn.Fails, built.Message);
    }

    [Fact]
    public void Only_suspects_are_tried()
    {
        var layout = Planted.Tested(Planted.Demo, Planted.Kink("R8", 30));
        layout = layout with { Measured = layout.Measured! with { Suspects = [CauseKind.Bore, CauseKind.Roughness] } };

        var result = Planted.Solve(layout);

        Assert.Equal(ImmutableArray.Create(CauseKind.AsDrawn, CauseKind.Roughness, CauseKind.Bore), result.Causes.Select(cause => cause.Kind).Order());
    }

    [Fact]
    public void Types_of_nozzle_without_a_reading_are_left_out_and_said_so()
    {
        var layout = Planted.Tested(Planted.Demo, drawn => drawn);
        var only = layout.Measured!.Readings.Where(reading => ((Nozzle)layout.Points[reading.Point]).Type == "cone-1.2" && layout.Points[reading.Point].Id.StartsWith("cell", StringComparison.Ordinal)).Take(1);
        layout = layout with { Measured = layout.Measured with { Readings = [.. only] } };

        var result = Planted.Solve(layout);

        Assert.Contains("more types of nozzle", result.LeftOut.Single(left => left.Kind == CauseKind.Nozzles).Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cancelled_token_ends_it()
    {
        using var source = new CancellationTokenSource();
        var layout = Planted.Tested(Planted.Demo, drawn => drawn);
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => LayoutCalibration.Of(layout, source.Token));
    }
}
