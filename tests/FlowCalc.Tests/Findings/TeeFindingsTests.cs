using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class TeeFindingsTests
{
    [Theory]
    [InlineData("1.5 mm", false)]
    [InlineData("0.9 mm", true)]
    public void A_bullhead_that_gives_one_outlet_under_30_per_cent_is_warned_of(string right, bool isOutside)
    {
        var judged = Judged.Of(Orifices("branch", "1.5 mm", right));

        Assert.Equal(isOutside, judged.Has(FindingCodes.TeeOutsideData));
        if (!isOutside) return;
        var finding = judged.Single(FindingCodes.TeeOutsideData);
        Assert.Equal(["T"], finding.Where);
        Assert.Equal(judged.Nozzle("right").Share, finding.Measured!.Value.Si, tolerance: 1e-12);
        Assert.Equal(0.30, finding.Limit!.Value.Si, tolerance: 1e-12);
    }

    [Theory]
    [InlineData("1.5 mm", "1.5 mm", null)]
    [InlineData("1.5 mm", "0.9 mm", null)]  // 26 %, which a tee fed through its run still has data for
    [InlineData("1.5 mm", "0.4 mm", 0.10)]
    [InlineData("0.4 mm", "1.5 mm", 0.90)]
    public void A_run_fed_tee_whose_branch_takes_under_10_or_over_90_per_cent_is_warned_of(string run, string branch, double? limit)
    {
        var judged = Judged.Of(Orifices("run", run, branch));

        var finding = judged.All(FindingCodes.TeeOutsideData).SingleOrDefault();

        Assert.Equal(limit, finding?.Limit?.Si);
        if (limit is not null) Assert.Equal(judged.Nozzle("right").Share, finding!.Measured!.Value.Si, tolerance: 1e-12);
    }

    [Fact]
    public void A_tee_without_a_body_is_noted_with_how_far_the_answer_would_move()
    {
        var smooth = Judged.Of(Pair.With(", \"body\": \"smooth\"", ""));
        var threaded = Judged.Of(Pair.With("\"smooth\"", "\"threaded\""));

        var finding = smooth.Single(FindingCodes.TeeBodyAssumed);

        Assert.Equal(["T"], finding.Where);
        Assert.Equal(Severity.Note, finding.Severity);
        Assert.Equal(threaded.Nozzle("left").MassFlow / smooth.Nozzle("left").MassFlow - 1, finding.Measured!.Value.Si, tolerance: 1e-9);
        Assert.True(finding.Measured.Value.Si < 0);
        Assert.False(threaded.Has(FindingCodes.TeeBodyAssumed));
    }

    [Fact]
    public void Where_nothing_flows_a_tee_without_a_body_moves_nothing()
    {
        var dry = Pair.With("\"8 bar\"", "\"0.5 bar\"").Replace("\"tube\": \"feed\", \"length\": \"1 m\"", "\"tube\": \"feed\", \"length\": \"8 m\", \"rise\": \"8 m\"", StringComparison.Ordinal);

        var judged = Judged.Of(Pair.Edit(dry, ", \"body\": \"smooth\"", ""));

        Assert.Equal(0, judged.Flow.Supply!.MassFlow.KilogramsPerSecond);
        Assert.EndsWith("threaded, there would be no flow either.", judged.Single(FindingCodes.TeeBodyAssumed).Message, StringComparison.Ordinal);
        Assert.Null(judged.Single(FindingCodes.TeeBodyAssumed).Measured);
    }

    [Theory]
    [InlineData("run", "1 m", "-1 m", "2 m", "0 m", null)]          // branch square to the feed, run straight on
    [InlineData("run", "1 m", "-1 m", "2 m", "0.2 m", null)]        // run 11.3° off
    [InlineData("run", "1 m", "-1 m", "2 m", "0.5 m", "L")]         // run 26.6° off
    [InlineData("run", "1.5 m", "-1 m", "2 m", "0 m", "R")]         // branch 26.6° off square
    [InlineData("branch", "1 m", "-1 m", "1 m", "1 m", null)]       // both outlets square to the feed and in line
    [InlineData("branch", "1.2 m", "-1 m", "1.2 m", "1 m", "R")]    // each 11.3° off square, so 22.6° out of line
    [InlineData("branch", "1.5 m", "-1 m", "1 m", "1 m", "R")]
    public void A_tube_that_leaves_over_15_degrees_off_its_port_is_warned_of(string fedThrough, string rightX, string rightY, string leftX, string leftY, string? run)
    {
        var bullhead = fedThrough == "branch";
        var judged = Judged.Of($$"""
            {
              "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
              "tubes": { "feed": { "bore": "6 mm", "roughness": "1.5 µm" } },
              "points": [
                { "id": "source", "kind": "supply", "at": ["0 m", "0 m", "0 m"] },
                { "id": "T", "kind": "tee", "fedThrough": "{{fedThrough}}", "body": "smooth", "at": ["1 m", "0 m", "0 m"] },
                { "id": "left", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 }, "at": ["{{leftX}}", "{{leftY}}", "0 m"] },
                { "id": "right", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 }, "at": ["{{rightX}}", "{{rightY}}", "0 m"] }
              ],
              "runs": [
                { "id": "A", "from": "source", "to": "T", "tube": "feed" },
                { "id": "L", "from": "T", "to": "left", "tube": "feed"{{(bullhead ? "" : ", \"leaves\": \"run\"")}} },
                { "id": "R", "from": "T", "to": "right", "tube": "feed"{{(bullhead ? "" : ", \"leaves\": \"branch\"")}} }
              ]
            }
            """);

        var finding = judged.All(FindingCodes.TeePortOffAngle).SingleOrDefault();

        Assert.Equal(run, finding?.Where.Single());
        if (run is not null) Assert.InRange(finding!.Measured!.Value.Si * 180 / Math.PI, 22, 27);
    }

    static string Orifices(string fedThrough, string left, string right)
    {
        var json = Pair.With("\"fedThrough\": \"branch\"", $"\"fedThrough\": \"{fedThrough}\"");
        json = Pair.Edit(json, "\"left\", \"kind\": \"nozzle\", \"orifice\": { \"diameter\": \"1.5 mm\"", $"\"left\", \"kind\": \"nozzle\", \"orifice\": {{ \"diameter\": \"{left}\"");
        json = Pair.Edit(json, "\"right\", \"kind\": \"nozzle\", \"orifice\": { \"diameter\": \"1.5 mm\"", $"\"right\", \"kind\": \"nozzle\", \"orifice\": {{ \"diameter\": \"{right}\"");
        return fedThrough == "branch" ? json
            : Pair.Edit(Pair.Edit(json, "\"id\": \"L\",", "\"id\": \"L\", \"leaves\": \"run\","), "\"id\": \"R\",", "\"id\": \"R\", \"leaves\": \"branch\",");
    }
}
