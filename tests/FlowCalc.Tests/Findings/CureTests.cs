using FlowCalc.Examples;
using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

/// <summary>A cure is told only after it was tried: these tests make the change themselves, in the document, and solve it again.</summary>
public class CureTests
{
    static readonly string Demo = System.Text.Encoding.UTF8.GetString(ExampleCatalogue.Find("raid-pickup")!.Value.Span);

    const string ThinScuttle = """ "to": "T-scuttle", "leaves": "branch", "tube": "drop" """;
    const string WideScuttle = """ "to": "T-scuttle", "leaves": "branch", "tube": "feed" """;

    [Fact]
    public void The_thin_run_of_the_raid_pickup_is_found_with_the_leg_and_the_kind_of_loss()
    {
        var judged = Judged.Of(Demo);

        var branch = judged.Single(FindingCodes.UnevenBranch);
        Assert.Equal(["T-front", "R11", "fuel-rail", "exhaust"], branch.Where);
        Assert.Equal(judged.Nozzle("fuel-rail").Deviation!.Value, branch.Measured!.Value.Si);
        Assert.Equal(Severity.Fail, branch.Severity);
        Assert.Contains("the dearest run in it is R11 (3 mm bore)", branch.Message, StringComparison.Ordinal);
        Assert.Contains("mostly friction in straight tube", branch.Message, StringComparison.Ordinal);
        Assert.Equal(["fuel-rail", "exhaust"], judged.All(FindingCodes.StarvedNozzle).SelectMany(finding => finding.Where));
        Assert.All(judged.All(FindingCodes.StarvedNozzle), finding => Assert.InRange(finding.Measured!.Value.Si, -0.25, -0.15));
    }

    [Fact]
    public void The_next_bore_in_that_one_run_is_the_cure_of_the_raid_pickup_and_holds_when_tried()
    {
        var before = Judged.Of(Demo);
        var after = Judged.Of(Pair.Edit(Demo, ThinScuttle, WideScuttle));

        Assert.All(before.All(FindingCodes.StarvedNozzle).Append(before.Single(FindingCodes.UnevenBranch)), finding =>
        {
            var nozzle = finding.Code == FindingCodes.UnevenBranch ? "fuel-rail" : finding.Where[0];
            Assert.Equal([new CureChange("runs/R11/tube", "drop", "feed")], finding.Cure!.Changes);
            Assert.Equal(before.Nozzle(nozzle).Deviation!.Value, finding.Cure.Before.Si);
            Assert.Equal(after.Nozzle(nozzle).Deviation!.Value, finding.Cure.After.Si, tolerance: 1e-12);
        });
        Assert.InRange(before.Worst(), 0.15, 0.25);
        Assert.True(after.Worst() < 0.10);
        Assert.False(after.Has(FindingCodes.StarvedNozzle));
        Assert.False(after.Has(FindingCodes.OverfedNozzle));
        Assert.False(after.Has(FindingCodes.UnevenBranch));
    }

    [Fact]
    public void The_message_of_a_cure_tells_the_numbers_before_and_after()
    {
        var cure = Judged.Of(Demo).All(FindingCodes.StarvedNozzle).First().Cure!;
        var after = Judged.Of(Pair.Edit(Demo, ThinScuttle, WideScuttle));

        var worst = after.Flow.Nozzles.MaxBy(nozzle => Math.Abs(nozzle.Deviation ?? 0))!;
        Assert.StartsWith("With feed (6 mm bore) instead of drop (3 mm bore) in R11, the deviation of fuel-rail goes from ", cure.Message, StringComparison.Ordinal);
        Assert.Contains(Signed(cure.Before.Si), cure.Message, StringComparison.Ordinal);
        Assert.Contains(Signed(cure.After.Si), cure.Message, StringComparison.Ordinal);
        Assert.Contains($"the worst nozzle is then {after.Layout.Points[worst.Point].Id} at {Signed(worst.Deviation!.Value)}", cure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_run_with_bends_is_solved_as_the_changed_document_reads()
    {
        // Both outlets turn in two corners, so that the wider tube's larger radius changes the length as well.
        var json = Pair.Routed("drop");
        var before = Judged.Of(json);
        var after = Judged.Of(Pair.Routed("feed"));

        var cure = before.Single(FindingCodes.StarvedNozzle).Cure!;

        Assert.Equal([new CureChange("runs/R/tube", "drop", "feed")], cure.Changes);
        Assert.Equal(after.Nozzle("right").Deviation!.Value, cure.After.Si, tolerance: 1e-12);
        Assert.NotEqual(before.Layout.Runs[2].Length.Meters, after.Layout.Runs[2].Length.Meters, tolerance: 1e-4);
    }

    [Fact]
    public void A_wider_tube_that_cannot_take_the_bends_comes_after_one_that_can()
    {
        // A bend of 18 mm suits drop but neither feed (28 mm) nor trunk (35 mm); mid allows it.
        var json = Pair.Edit(Pair.With(Pair.Right, """ "to": "right", "tube": "drop", "length": "2 m", "bends": [{ "angle": "90°", "radius": "18 mm", "count": 2 }] """),
            "\"drop\":", """ "mid": { "outsideDiameter": "6 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "18 mm" }, "drop": """);

        var cure = Judged.Of(json).Single(FindingCodes.StarvedNozzle).Cure!;

        Assert.Equal("mid", Assert.Single(cure.Changes).To);
        Assert.DoesNotContain("tighter", cure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cure_whose_bends_would_be_too_tight_says_so_where_there_is_no_other()
    {
        var json = Pair.With(Pair.Right, """ "to": "right", "tube": "drop", "length": "2 m", "bends": [{ "angle": "90°", "radius": "5 mm", "count": 2 }] """);

        var cure = Judged.Of(json).Single(FindingCodes.StarvedNozzle).Cure!;

        Assert.Contains("tighter", cure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_wider_tube_that_is_too_weak_for_the_supply_comes_after_one_that_bears_it()
    {
        var json = Pair.With(Pair.Right, Pair.LongThinRight);
        json = Pair.Edit(json, "\"minimumBendRadius\": \"28 mm\"", "\"minimumBendRadius\": \"28 mm\", \"workingPressure\": \"7 bar\"");

        var cure = Judged.Of(json).Single(FindingCodes.StarvedNozzle).Cure!;

        Assert.Equal("trunk", Assert.Single(cure.Changes).To);
    }

    [Fact]
    public void A_tight_fitting_is_opened_rather_than_the_tube_replaced()
    {
        const string tight = """ "to": "right", "tube": "feed", "length": "1 m", "fittings": [{ "fitting": { "kind": "union", "bore": "1.8 mm", "length": "20 mm" } }] """;
        var before = Judged.Of(Pair.With(Pair.Right, tight));
        var after = Judged.Of(Pair.With(Pair.Right, Pair.Edit(tight, "1.8 mm", "6 mm")));

        var branch = before.Single(FindingCodes.UnevenBranch);

        Assert.Contains("mostly fittings", branch.Message, StringComparison.Ordinal);
        Assert.Equal("runs/R/fittings/0", Assert.Single(branch.Cure!.Changes).Path);
        Assert.Equal(after.Layout.Runs[2].Fittings[0].Fitting, CureProof.Changed(Pair.With(Pair.Right, tight), branch.Cure).Runs[2].Fittings[0].Fitting);
        Assert.Equal(after.Nozzle("right").Deviation!.Value, branch.Cure.After.Si, tolerance: 1e-12);
        Assert.True(after.Worst() < before.Worst());
    }

    [Fact]
    public void A_threaded_tee_is_exchanged_where_it_is_what_costs()
    {
        var json = TwoTees("threaded");
        var before = Judged.Of(json);

        var starved = before.All(FindingCodes.StarvedNozzle).First();
        var after = Judged.Of(TwoTees("smooth"));

        Assert.Equal("a", Assert.Single(starved.Where));
        Assert.Equal([new CureChange("points/T2/body", "threaded", "smooth")], starved.Cure!.Changes);
        Assert.Equal(0, after.Nozzle("a").Deviation!.Value, tolerance: 1e-9);
        Assert.Equal(0, starved.Cure.After.Si, tolerance: 1e-9);
    }

    [Fact]
    public void A_tube_of_the_catalogue_is_offered_where_the_document_has_none_wider()
    {
        var json = Pair.With(Pair.Right, """ "to": "right", "tube": "drop", "length": "6 m" """);
        json = Pair.Edit(json, "\"tube\": \"trunk\", \"length\": \"1 m\"", "\"tube\": \"drop\", \"length\": \"0.1 m\"");
        json = Pair.Edit(json, "\"to\": \"left\", \"tube\": \"feed\", \"length\": \"1 m\"", "\"to\": \"left\", \"tube\": \"drop\", \"length\": \"0.1 m\"");
        json = System.Text.RegularExpressions.Regex.Replace(json, "\"(trunk|feed)\":[^\n]*\n", "");
        var before = Judged.Of(json);

        var cure = before.Single(FindingCodes.StarvedNozzle).Cure!;

        var change = Assert.Single(cure.Changes);
        Assert.Equal("runs/R/tube", change.Path);
        Assert.NotNull(FlowCalc.Stock.TubeCatalogue.Find(change.To!.Words));
        var after = Judged.Of(Pair.Edit(json, "\"to\": \"right\", \"tube\": \"drop\"", $"\"to\": \"right\", \"tube\": \"{change.To}\""));
        Assert.Equal(after.Nozzle("right").Deviation!.Value, cure.After.Si, tolerance: 1e-12);
        Assert.True(after.Worst() < before.Worst());
    }

    [Fact]
    public void Another_nozzle_is_offered_where_tubes_are_not_to_blame()
    {
        var json = Pair.Edit(Pair.Json, "\"points\":", """
            "nozzles": {
              "small": { "orifice": { "diameter": "1.2 mm", "dischargeCoefficient": 0.82 } },
              "large": { "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 } }
            }, "points":
            """);
        const string own = "\"orifice\": { \"diameter\": \"1.5 mm\", \"dischargeCoefficient\": 0.82 } }";
        json = Pair.Edit(json, "\"left\", \"kind\": \"nozzle\", " + own, "\"left\", \"kind\": \"nozzle\", \"nozzle\": \"large\", \"share\": 0.5 }");
        json = Pair.Edit(json, "\"right\", \"kind\": \"nozzle\", " + own, "\"right\", \"kind\": \"nozzle\", \"nozzle\": \"small\", \"share\": 0.5 }");
        var before = Judged.Of(json);

        var branch = before.Single(FindingCodes.UnevenBranch);

        Assert.Contains("its nozzles are small for the shares wanted of them", branch.Message, StringComparison.Ordinal);
        Assert.Equal([new CureChange("points/right/nozzle", "small", "large")], branch.Cure!.Changes);
        Assert.Equal(0, branch.Cure.After.Si, tolerance: 1e-9);
    }

    [Fact]
    public void Where_nothing_helps_there_is_no_cure_and_the_message_says_what_was_tried()
    {
        // No tube and no pressure within reach lifts the liquid so high.
        var starved = Judged.Of(CureDocuments.OutOfReach).Single(FindingCodes.StarvedNozzle);

        Assert.Null(starved.Cure);
        Assert.Matches("no cure found, [1-9][0-9]* single changes tried \\(wider tubes, tees turned round, more pressure\\)\\.$", starved.Message);
    }

    [Fact]
    public void Where_no_change_clears_it_the_one_that_gains_most_is_told_and_said_not_to()
    {
        var json = Pair.Edit(Pair.With("\"id\": \"right\",", "\"id\": \"right\", \"share\": 0.97,"), "\"format\": 1,", "\"format\": 1, \"limits\": { \"starved-nozzle\": { \"warn\": 0.01, \"fail\": 0.02 } },");

        var starved = Judged.Of(json).Single(FindingCodes.StarvedNozzle);

        Assert.False(starved.Cure!.Clears);
        Assert.Contains("which still fails", starved.Cure.Message, StringComparison.Ordinal);
        Assert.Equal(Severity.Fail, starved.Cure.Outcome.Verdict);
    }

    [Fact]
    public void A_nozzle_is_drilled_where_no_tube_is_to_blame()
    {
        // The right nozzle is too small for what is wanted of it; wider tube moves its share by a fraction of a per cent.
        var starved = Judged.Of(Pair.With("\"id\": \"right\",", "\"id\": \"right\", \"share\": 0.8,")).Single(FindingCodes.StarvedNozzle);

        Assert.True(starved.Cure!.Clears);
        Assert.Equal("points/right/orifice/diameter", Assert.Single(starved.Cure.Changes).Path);
    }

    [Fact]
    public void A_balanced_layout_makes_no_trials()
    {
        var trials = new FlowCalc.Findings.Cures.Trials(4, TestContext.Current.CancellationToken);
        var judged = Judged.Of(Pair.Json);
        var flowCase = new FlowCase(judged.Layout, judged.Flow, FlowCalc.Quantities.UnitSystem.Metric, judged.Judgement.Limits, TestContext.Current.CancellationToken);

        FlowCalc.Findings.Cures.FlowCures.Seek(flowCase, FlowRules.Find(flowCase), trials);

        Assert.Equal(0, trials.Done);
    }

    [Theory]
    [InlineData(4, 120)]
    [InlineData(100_000, 1)]
    [InlineData(10_000_000, 1)]
    public void The_number_of_trials_is_bounded_by_the_size_of_the_layout(int points, int most)
    {
        var trials = new FlowCalc.Findings.Cures.Trials(points, TestContext.Current.CancellationToken);
        var layout = Judged.Read(Pair.Json);

        var solved = Enumerable.Range(0, most + 1).Count(_ => trials.Solve(layout) is not null);

        Assert.Equal(most, solved);
        Assert.Equal(most, trials.Done);
        Assert.True(trials.IsCutShort);
    }

    [Fact]
    public void Cancelling_ends_the_search()
    {
        var judged = Judged.Of(Demo);
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => FlowFindings.Judge(judged.Layout, judged.Flow, FlowCalc.Quantities.UnitSystem.Metric, source.Token));
    }

    static string TwoTees(string body) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "limits": { "starved-nozzle": { "warn": 0.01 } },
          "tubes": { "feed": { "bore": "6 mm", "roughness": "1.5 µm" } },
          "points": [
            { "id": "source", "kind": "supply" },
            { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "T2", "kind": "tee", "fedThrough": "branch", "body": "{{body}}" },
            { "id": "T3", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "a", "kind": "nozzle", "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.82 } },
            { "id": "b", "kind": "nozzle", "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.82 } },
            { "id": "c", "kind": "nozzle", "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.82 } },
            { "id": "d", "kind": "nozzle", "orifice": { "diameter": "4 mm", "dischargeCoefficient": 0.82 } }
          ],
          "runs": [
            { "from": "source", "to": "T", "tube": "feed", "length": "0.05 m" },
            { "from": "T", "to": "T2", "tube": "feed", "length": "0.05 m" },
            { "from": "T", "to": "T3", "tube": "feed", "length": "0.05 m" },
            { "from": "T2", "to": "a", "tube": "feed", "length": "0.05 m" },
            { "from": "T2", "to": "b", "tube": "feed", "length": "0.05 m" },
            { "from": "T3", "to": "c", "tube": "feed", "length": "0.05 m" },
            { "from": "T3", "to": "d", "tube": "feed", "length": "0.05 m" }
          ]
        }
        """;

    static string Signed(double deviation) => deviation.ToString("+0.#%;-0.#%", System.Globalization.CultureInfo.InvariantCulture).Replace("%", " %", StringComparison.Ordinal);
}
