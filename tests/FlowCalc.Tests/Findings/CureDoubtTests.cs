using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

/// <summary>What keeps a change from being told as a cure, or is told beside it.</summary>
public class CureDoubtTests
{
    [Theory]
    [InlineData("1.55 mm", -0.46, false)]   // worse: half of what is wanted is as bad as twice as much of it
    [InlineData("1.7 mm", -0.33, false)]    // better, yet a failure on the other side
    [InlineData("2.1 mm", 0.01, true)]
    public void A_change_that_swaps_too_much_for_far_too_little_is_no_cure(string bore, double deviation, bool isCure)
    {
        // n0 has nearly twice the K-factor of the nine others, and one other tube is there to throttle it.
        var judged = Judged.Of(Star(bore));
        var narrowed = Judged.Of(Pair.Edit(Star(bore), "\"to\": \"n0\", \"tube\": \"feed\"", "\"to\": \"n0\", \"tube\": \"hair\""));

        var overfed = judged.Single(FindingCodes.OverfedNozzle);

        Assert.InRange(judged.Nozzle("n0").Deviation!.Value, 0.70, 0.80);
        Assert.Equal(deviation, narrowed.Nozzle("n0").Deviation!.Value, tolerance: 0.02);
        Assert.Equal(isCure ? "runs/r0/tube" : "points/n0/kFactor", Assert.Single(overfed.Cure!.Changes).Path);
    }

    [Fact]
    public void A_tube_too_rough_for_a_tight_fitting_in_the_run_is_never_tried()
    {
        var judged = Judged.Of("""
            { "format": 1, "agent": "water", "temperature": "20 °C", "supply": { "pressure": "10 bar" },
              "tubes": { "thin": { "bore": "4 mm", "roughness": "1.5 µm" }, "big": { "bore": "40 mm", "roughness": "2 mm" } },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
                { "id": "A", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }, { "id": "B", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" } ],
              "runs": [ { "id": "s", "from": "S", "to": "T", "bore": "8 mm", "length": "1 m" },
                { "id": "a", "from": "T", "to": "A", "tube": "thin", "length": "9 m", "fittings": [ { "kind": "union", "bore": "1.5 mm", "length": "50 mm" } ] },
                { "id": "b", "from": "T", "to": "B", "bore": "8 mm", "length": "1 m" } ] }
            """);

        Assert.DoesNotContain(judged.Judgement.Findings, finding => finding.Cure?.Changes.Any(change => change.To == "big") == true);
    }

    [Fact]
    public void Only_kinds_of_change_that_were_tried_are_said_to_have_been()
    {
        var message = Judged.Of(CureDocuments.OutOfReach).Single(FindingCodes.StarvedNozzle).Message;

        Assert.EndsWith(" tried (wider tubes, tees turned round, more pressure).", message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_bend_radius_that_is_stated_is_kept_though_it_equals_the_old_tubes_least()
    {
        var before = Judged.Of(Pair.Routed("drop", "18 mm", "10 mm", left: "40 mm"));
        var after = Judged.Of(Pair.Routed("feed", "18 mm", "10 mm", left: "40 mm"));

        var cure = before.Single(FindingCodes.StarvedNozzle).Cure!;

        Assert.Equal([new CureChange("runs/R/tube", "drop", "feed")], cure.Changes);
        Assert.Equal(after.Nozzle("right").Deviation!.Value, cure.After.Si, tolerance: 1e-12);
    }

    [Fact]
    public void A_stated_radius_below_the_least_of_the_new_tube_is_a_doubt()
    {
        var change = Wider(Pair.Routed("drop", "18 mm", "28 mm", left: "40 mm"));

        Assert.Equal("feed", change.Changes[0].To);
        Assert.Equal("a bend of R would be tighter than the 28 mm that the tube allows", change.Doubt);
    }

    [Fact]
    public void A_tube_without_a_least_radius_is_not_offered_to_a_run_that_takes_its_radius_from_the_tube()
    {
        var json = Pair.Routed("drop", null, null, left: "40 mm");

        var changes = Judged.Of(json).Judgement.Findings.SelectMany(finding => finding.Cure?.Changes ?? []);

        Assert.DoesNotContain(new CureChange("runs/R/tube", "drop", "feed"), changes);
        Assert.NotEmpty(FlowCalc.Layouts.LayoutReader.Read(System.Text.Encoding.UTF8.GetBytes(Pair.Routed("feed", null, null, left: "40 mm")), cancellationToken: TestContext.Current.CancellationToken).Faults);
    }

    [Fact]
    public void A_bend_tight_against_the_outside_diameter_is_a_doubt_where_the_new_tube_states_no_least_radius()
    {
        var json = Pair.With(Pair.Right, """ "to": "right", "tube": "drop", "length": "2 m", "bends": [{ "angle": "90°", "radius": "18 mm", "count": 2 }] """);
        json = Pair.Edit(Pair.Edit(json, ", \"minimumBendRadius\": \"35 mm\"", ""), ", \"minimumBendRadius\": \"28 mm\"", "");

        Assert.Equal("a bend of R would be tighter than 32 mm, 4 outside diameters of the tube", Wider(json).Doubt);
    }

    [Fact]
    public void A_leg_whose_nozzles_are_too_high_is_not_blamed_on_their_size()
    {
        var high = Pair.Edit(Pair.With("\"8 bar\"", "\"0.5 bar\""), Pair.Right, """ "to": "right", "tube": "feed", "length": "8 m", "rise": "8 m" """);

        var branch = Judged.Of(high).Single(FindingCodes.UnevenBranch);

        Assert.Contains("right gets nothing, as the rise to it takes all the pressure there is", branch.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("small for the shares", branch.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("dearest", branch.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_many_tight_fittings_only_the_costliest_are_opened()
    {
        var fittings = string.Join(',', Enumerable.Range(0, 40).Select(place =>
            $$"""{ "fitting": { "kind": "union", "bore": "{{(place is 17 or 33 ? 2 : 5)}} mm", "length": "20 mm" } }"""));
        var judged = Judged.Of(Pair.With(Pair.Right, $"\"to\": \"right\", \"tube\": \"feed\", \"length\": \"1 m\", \"fittings\": [{fittings}]"));
        var flowCase = new FlowCase(judged.Layout, judged.Flow, FlowCalc.Quantities.UnitSystem.Metric, judged.Judgement.Limits, TestContext.Current.CancellationToken);

        var paths = FlowCalc.Findings.Cures.FittingChanges.Opened(flowCase, 2).Select(change => change.Changes[0].Path).ToArray();

        Assert.Equal(5, paths.Length);
        Assert.Equal(["runs/R/fittings/17", "runs/R/fittings/33"], paths.Take(2));
    }

    [Fact]
    public void Cancelling_ends_a_judgement_that_needs_no_trial()
    {
        var judged = Judged.Of(Pair.Json);
        using var source = new CancellationTokenSource();
        source.Cancel();

        Assert.Throws<OperationCanceledException>(() => FlowFindings.Judge(judged.Layout, judged.Flow, FlowCalc.Quantities.UnitSystem.Metric, source.Token));
    }

    [Fact]
    public void A_run_with_a_bore_of_its_own_is_offered_that_of_its_twin()
    {
        var before = Judged.Of(Twins("2 mm"));
        var after = Judged.Of(Twins("6 mm"));

        var cure = before.Single(FindingCodes.StarvedNozzle).Cure!;

        Assert.Equal([new CureChange("runs/R/bore", "2 mm", "6 mm")], cure.Changes);
        Assert.StartsWith("With 6 mm bore instead of 2 mm bore in R, ", cure.Message, StringComparison.Ordinal);
        Assert.Equal(after.Nozzle("right").Deviation!.Value, cure.After.Si, tolerance: 1e-12);
    }

    static string Twins(string right) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "points": [
            { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "left", "kind": "nozzle", "kFactor": "0.5 L/min/bar^0.5" }, { "id": "right", "kind": "nozzle", "kFactor": "0.5 L/min/bar^0.5" }
          ],
          "runs": [
            { "id": "A", "from": "S", "to": "T", "bore": "8 mm", "roughness": "1.5 µm", "length": "1 m" },
            { "id": "L", "from": "T", "to": "left", "bore": "6 mm", "roughness": "1.5 µm", "length": "2 m" },
            { "id": "R", "from": "T", "to": "right", "bore": "{{right}}", "roughness": "1.5 µm", "length": "2 m" }
          ]
        }
        """;

    static FlowCalc.Findings.Cures.LayoutChange Wider(string json)
    {
        var judged = Judged.Of(json);
        var flowCase = new FlowCase(judged.Layout, judged.Flow, FlowCalc.Quantities.UnitSystem.Metric, judged.Judgement.Limits, TestContext.Current.CancellationToken);
        return FlowCalc.Findings.Cures.TubeChanges.Wider(flowCase, 2, 1).Single();
    }

    static string Star(string hair)
    {
        var nozzles = Enumerable.Range(0, 10).Select(n => $$"""{ "id": "n{{n}}", "kind": "nozzle", "kFactor": "{{(n == 0 ? "1.9" : "1")}} L/min/bar^0.5", "share": 0.1 }""");
        var runs = Enumerable.Range(0, 10).Select(n => $$"""{ "id": "r{{n}}", "from": "J", "to": "n{{n}}", "tube": "feed", "length": "0.5 m" }""");
        return $$"""
            { "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
              "tubes": { "feed": { "bore": "12 mm", "roughness": "1.5 µm" }, "hair": { "bore": "{{hair}}", "roughness": "1.5 µm" } },
              "points": [{ "id": "S", "kind": "supply" }, { "id": "J", "kind": "junction" }, {{string.Join(',', nozzles)}}],
              "runs": [{ "id": "r", "from": "S", "to": "J", "tube": "feed", "length": "0.5 m" }, {{string.Join(',', runs)}}] }
            """;
    }

}
