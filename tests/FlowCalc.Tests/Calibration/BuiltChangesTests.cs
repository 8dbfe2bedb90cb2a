using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Calibration;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Tests.Flows;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Calibration;

/// <summary>The changes that an answer tells, made in the document, read and solved: they give the flow that it tells of the system as built.</summary>
public class BuiltChangesTests
{
    const string Points = """
        { "id": "T", "kind": "tee", "fedThrough": "branch" }, { "id": "left", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }, { "id": "right", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.8 } }
        """;

    static readonly string OwnBores = Documents.Water(Points, """
        { "id": "feed", "from": "S", "to": "T", "bore": "6 mm", "length": "2 m", "lossCoefficient": 1.5 }, { "id": "to/left", "from": "T", "to": "left", "bore": "4 mm", "length": "2 m" }, { "id": "to-right", "from": "T", "to": "right", "bore": "4 mm", "length": "2.5 m" }
        """);

    static readonly string OfCatalogue = Documents.Water(Points, """
        { "id": "feed", "from": "S", "to": "T", "tube": "CU-8x1", "length": "2 m" }, { "id": "to/left", "from": "T", "to": "left", "tube": "CU-6x1", "length": "2 m" }, { "id": "to-right", "from": "T", "to": "right", "tube": "CU-6x1", "length": "2.5 m" }
        """);

    static readonly string Mixed = Documents.Water(Points, """
        { "id": "feed", "from": "S", "to": "T", "tube": "wide", "length": "2 m" }, { "id": "to/left", "from": "T", "to": "left", "tube": "CU-6x1", "length": "2 m" }, { "id": "to-right", "from": "T", "to": "right", "bore": "4 mm", "length": "2.5 m" }
        """, """ "tubes": { "wide": { "bore": "6 mm" } }, """);

    [Fact]
    public void A_worn_nozzle_is_held_against_what_was_drawn_of_it_and_not_against_itself()
    {
        var drawn = Documents.Read(OwnBores) with { Measured = null };
        var groups = NozzleGroup.Of(drawn.Points);
        var layout = Planted.Tested(drawn, one => BuiltLayout.WithNozzles(one, groups, [0.6, 1]));
        layout = layout with { Measured = layout.Measured! with { Suspects = [CauseKind.Nozzles] } };

        var result = Planted.Solve(layout);

        var (was, now) = (result.DrawnFlow!.Nozzles[0], result.BuiltFlow!.Nozzles[0]);
        Assert.Equal(was.WantedShare, now.WantedShare, tolerance: 1e-12);
        Assert.True(now.Deviation < -0.15, $"{now.Deviation}");
    }

    [Fact]
    public void A_blocked_run_in_wide_tube_is_told_in_a_size_that_a_document_may_state()
    {
        const string points = """{ "id": "T", "kind": "tee", "fedThrough": "branch" }, { "id": "left", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }, { "id": "right", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" }""";
        const string runs = """{ "id": "feed", "from": "S", "to": "T", "bore": "40 mm", "length": "2 m" }, { "id": "to-left", "from": "T", "to": "left", "bore": "40 mm", "length": "2 m" }, { "id": "to-right", "from": "T", "to": "right", "bore": "40 mm", "length": "2 m" }""";
        var layout = Planted.Tested(Documents.Read(Documents.Water(points, runs)), Planted.Kink("to-left", 1e12));
        layout = layout with { Measured = layout.Measured! with { Suspects = [CauseKind.Run] } };

        var result = Planted.Solve(layout);

        Assert.Equal(1, result.Best!.Run);
        Assert.InRange(result.Best.Unknowns[0].Value, 1e8, 1e9);
    }

    public static TheoryData<string, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string>();
            foreach (var kind in (CauseKind[])[CauseKind.Run, CauseKind.Roughness, CauseKind.Bore, CauseKind.Nozzles])
                foreach (var document in (string[])["demo", OwnBores, OfCatalogue, Mixed])
                    rows.Add(document, kind.ToString());
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Changes_give_the_flow_of_the_system_as_built(string document, string word)
    {
        var kind = Enum.Parse<CauseKind>(word);
        var json = document == "demo" ? Encoding.UTF8.GetString(ExampleCatalogue.Find("raid-pickup")!.Value.Span) : document;
        var drawn = Documents.Read(json) with { Measured = null };
        var groups = NozzleGroup.Of(drawn.Points);
        var layout = Planted.Tested(drawn, one => kind switch
        {
            CauseKind.Run => BuiltLayout.WithLoss(one, 1, 80),
            CauseKind.Roughness => BuiltLayout.WithRoughness(one, 90e-6),
            CauseKind.Bore => BuiltLayout.WithBores(one, 0.9),
            _ => BuiltLayout.WithNozzles(one, groups, [.. groups.Select((_, at) => 0.8 + 0.25 * at)]),
        });
        layout = layout with { Measured = layout.Measured! with { Suspects = [kind] } };
        var result = Planted.Solve(layout);
        Assert.Equal(kind, result.Best!.Kind);

        foreach (var units in Enum.GetValues<UnitSystem>())
        {
            var changes = CalibrationFindings.Judge(layout, result, units, TestContext.Current.CancellationToken).Changes;
            Assert.NotEmpty(changes);
            var edited = DocumentEdit.Apply(Encoding.UTF8.GetBytes(json), [.. changes.Select(change => new DocumentChange(change.Path, JsonElement.Parse(change.To!.Json)))], TestContext.Current.CancellationToken);
            Assert.Empty(edited.Faults);
            var flow = SteadyFlow.Solve(Documents.Read(Encoding.UTF8.GetString(edited.Utf8.Span)), TestContext.Current.CancellationToken);

            foreach (var (told, solved) in result.BuiltFlow!.Nozzles.Zip(flow.Nozzles))
                Assert.Equal(1, solved.MassFlow.KilogramsPerSecond / told.MassFlow.KilogramsPerSecond, tolerance: 1e-9);
        }
    }

    [Fact]
    public void A_test_whose_supply_alone_was_otherwise_changes_nothing_of_the_layout()
    {
        var layout = Planted.Tested(Planted.Demo, drawn => drawn, pressureFactor: 0.7);
        layout = layout with { Measured = layout.Measured! with { Suspects = [CauseKind.SupplyPressure] } };
        var result = Planted.Solve(layout);

        Assert.Equal(CauseKind.SupplyPressure, result.Best!.Kind);
        Assert.Same(layout, result.Built);
        Assert.Empty(CalibrationFindings.Judge(layout, result, UnitSystem.Metric, TestContext.Current.CancellationToken).Changes);
    }

    [Fact]
    public void No_other_answer_hangs_on_the_test()
    {
        var json = JsonNode.Parse(ExampleCatalogue.Find("raid-pickup")!.Value.Span)!;
        var with = Documents.Read(json.ToJsonString());
        json.AsObject().Remove("measured");
        var without = Documents.Read(json.ToJsonString());

        Assert.NotNull(with.Measured);
        Assert.Equal(without.Assumptions, with.Assumptions);
        var (one, other) = (SteadyFlow.Solve(with, TestContext.Current.CancellationToken), SteadyFlow.Solve(without, TestContext.Current.CancellationToken));
        Assert.Equal(one.Nozzles, other.Nozzles);
        Assert.Equal(one.Assumptions, other.Assumptions);
    }
}
