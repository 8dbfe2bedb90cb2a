using FlowCalc.Flows;
using FlowCalc.Losses;

namespace FlowCalc.Tests.Flows;

/// <summary>Each part of a run is booked under its own kind, with the loss that its own law gives.</summary>
public class FittingFlowTests
{
    const double Density = 998.21, Viscosity = 1.0016e-3;

    static (FlowResult Result, double Head, double Reynolds) Solve(string inRun, double bore = 6)
    {
        var result = Documents.Solve(Documents.Water(
            """{ "id": "N", "kind": "nozzle", "orifice": { "diameter": "2 mm", "dischargeCoefficient": 0.8 } }""",
            FormattableString.Invariant($$"""{ "from": "S", "to": "N", "bore": "{{bore}} mm", "roughness": "0 mm", "length": "2 m", {{inRun}} }""")));
        var velocity = result.Runs[0].Velocity.MetersPerSecond;
        return (result, Density * velocity * velocity / 2, result.Runs[0].Reynolds);
    }

    static void Close(double expected, UnitsNet.Pressure loss) => Assert.Equal(expected, loss.Pascals, tolerance: 1e-4 * expected);

    [Fact]
    public void Straight_tube_is_what_the_arcs_leave()
    {
        var (result, head, reynolds) = Solve(""" "bends": [ { "angle": "90 °", "radius": "18 mm", "count": 4 } ] """);

        var straight = 2 - 4 * Math.PI / 2 * 0.018;
        Close(DarcyFriction.Factor(reynolds, 0) * straight / 0.006 * head, result.Runs[0].Losses.Tube);
        Close(4 * SmoothBend.Coefficient(reynolds, 0, SmoothBend.Shape(Math.PI / 2, 3)) * head, result.Runs[0].Losses.Bends);
    }

    [Fact]
    public void A_loss_coefficient_counts_on_the_tubes_head_under_fittings()
    {
        var (result, head, _) = Solve(""" "lossCoefficient": 2.5, "fittings": [ { "fitting": { "kind": "strainer", "lossCoefficient": 1.5 }, "count": 2 } ] """);

        Close(5.5 * head, result.Runs[0].Losses.Fittings);
    }

    [Fact]
    public void A_tight_bore_contracts_rubs_and_expands()
    {
        var (result, head, reynolds) = Solve(""" "fittings": [ { "kind": "union", "bore": "4.8 mm", "length": "24 mm" } ] """);

        const double ratio = 0.8;
        var own = BoreChange.SharpContraction(ratio) + BoreChange.Expansion(ratio) + DarcyFriction.Factor(reynolds / ratio, 0) * 24 / 4.8;
        Close(own / Math.Pow(ratio, 4) * head, result.Runs[0].Losses.Fittings);
    }

    [Fact]
    public void A_valve_loses_by_its_Kv_whatever_the_bore()
    {
        var (result, _, _) = Solve(""" "fittings": [ { "kind": "valve", "kv": "0.8 m3/h" } ] """);

        var flow = result.Supply!.VolumeFlow.CubicMetersPerSecond;
        Close(1e5 * Density / 1000 * Math.Pow(3600 * flow / 0.8, 2), result.Runs[0].Losses.Fittings);
    }

    [Theory]
    [InlineData(90, 1.20)]
    [InlineData(45, 0.30)]
    public void An_elbow_without_a_figure_counts_as_a_mitre_on_its_own_bore(int degrees, double coefficient)
    {
        var (result, head, _) = Solve($$""" "fittings": [ { "kind": "elbow", "angle": "{{degrees}} °" } ] """);

        // Table values of two digits (Rennels and Hudson 2012).
        Assert.Equal(coefficient, result.Runs[0].Losses.Fittings.Pascals / head, tolerance: 0.01);
    }

    [Fact]
    public void A_tight_elbow_adds_its_bores_loss_to_its_turn()
    {
        var (plain, head, _) = Solve(""" "fittings": [ { "kind": "elbow" } ] """);
        var (tight, tightHead, reynolds) = Solve(""" "fittings": [ { "kind": "elbow", "bore": "4.2 mm", "length": "12.6 mm" } ] """);

        const double ratio = 0.7;
        var turn = plain.Runs[0].Losses.Fittings.Pascals / head;
        var bore = BoreChange.SharpContraction(ratio) + BoreChange.Expansion(ratio) + DarcyFriction.Factor(reynolds / ratio, 0) * 3;
        Close((turn + bore) / Math.Pow(ratio, 4) * tightHead, tight.Runs[0].Losses.Fittings);
    }

    [Fact]
    public void A_tight_elbow_with_a_coefficient_adds_its_bores_loss_to_that()
    {
        var (result, head, reynolds) = Solve(""" "fittings": [ { "kind": "elbow", "lossCoefficient": 1.5, "bore": "4.2 mm", "length": "12.6 mm" } ] """);

        const double ratio = 0.7;
        var bore = BoreChange.SharpContraction(ratio) + BoreChange.Expansion(ratio) + DarcyFriction.Factor(reynolds / ratio, 0) * 3;
        Close((1.5 + bore / Math.Pow(ratio, 4)) * head, result.Runs[0].Losses.Fittings);
    }

    [Fact]
    public void A_bore_that_differs_by_a_last_digit_is_no_step()
    {
        var result = Documents.Solve(Documents.Water(
            """{ "id": "R", "kind": "reducer" }, { "id": "N", "kind": "nozzle", "orifice": { "diameter": "2 mm", "dischargeCoefficient": 0.8 } }""",
            """
            { "from": "S", "to": "R", "tube": "t", "length": "1 m", "fittings": [ { "kind": "union", "bore": "9 mm", "length": "0.5 m" } ] },
            { "from": "R", "to": "N", "bore": "9 mm", "length": "1 m" }
            """,
            """ "tubes": { "t": { "outsideDiameter": "12 mm", "wall": "1.5 mm" } }, """));

        Assert.Equal(0, result.Runs[0].Losses.Fittings.Pascals);
        Assert.Equal(0, result.Runs[1].Losses.BoreChanges.Pascals);
    }

    [Fact]
    public void A_reducer_loses_its_step_on_the_smaller_bores_head()
    {
        var result = Documents.Solve(Documents.Water(
            """{ "id": "R", "kind": "reducer" }, { "id": "N", "kind": "nozzle", "orifice": { "diameter": "2 mm", "dischargeCoefficient": 0.8 } }""",
            """{ "from": "S", "to": "R", "bore": "8 mm", "length": "1 m" }, { "from": "R", "to": "N", "bore": "5 mm", "length": "1 m" }"""));

        var velocity = result.Runs[1].Velocity.MetersPerSecond;
        Close(BoreChange.SharpContraction(5.0 / 8) * Density * velocity * velocity / 2, result.Runs[1].Losses.BoreChanges);
        Close(result.Runs[1].Losses.BoreChanges.Pascals, result.Runs[0].PressureOut - result.Runs[1].PressureIn);
    }

    [Theory]
    [InlineData("run", 5.0 / 8, true)]
    [InlineData("run", 1.0, false)]
    [InlineData("branch", 5.0 / 8, false)]
    public void A_step_in_bore_at_a_tee_counts_only_along_its_run(string port, double ratio, bool hasStep)
    {
        var (run, branch) = port == "run" ? (8 * ratio, 8.0) : (8.0, 8 * ratio);
        var result = Documents.Solve(Documents.Water(
            """
            { "id": "T", "kind": "tee", "fedThrough": "run", "body": "smooth" },
            { "id": "A", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }, { "id": "B", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }
            """,
            FormattableString.Invariant($$"""
            { "from": "S", "to": "T", "bore": "8 mm", "length": "1 m" },
            { "from": "T", "to": "A", "leaves": "run", "bore": "{{run}} mm", "length": "1 m" },
            { "from": "T", "to": "B", "leaves": "branch", "bore": "{{branch}} mm", "length": "1 m" }
            """)));

        Assert.Equal(hasStep, result.Runs[1].Losses.BoreChanges.Pascals > 0);
        Assert.Equal(0, result.Runs[2].Losses.BoreChanges.Pascals);
        var inlet = result.Runs[0].Velocity.MetersPerSecond;
        var share = result.Runs[2].MassFlow / result.Runs[0].MassFlow;
        var head = Density * inlet * inlet / 2;
        Assert.Equal(RunFedTee.Run(share, TeeBody.Smooth) * head, result.Runs[1].Losses.Tees.Pascals, tolerance: 1e-4 * head);
        Assert.Equal(RunFedTee.Branch(share, branch / 8, 0, TeeBody.Smooth) * head, result.Runs[2].Losses.Tees.Pascals, tolerance: 1e-4 * head);
    }

    [Fact]
    public void A_nozzle_behind_nearly_all_of_the_loss_keeps_a_pressure_that_fits_its_flow()
    {
        var result = Documents.Solve(Documents.Water(
            """{ "id": "N", "kind": "nozzle", "kFactor": "1000 L/min/bar^0.5" }""",
            """{ "from": "S", "to": "N", "bore": "0.1 mm", "length": "10 m" }""", pressure: "90 bar"));

        // K in L/min at 1 bar: p = (Q / K)².
        var nozzle = result.Nozzles[0];
        var bar = Math.Pow(nozzle.VolumeFlow.LitersPerMinute / 1000, 2) * 0.99821;
        Assert.True(nozzle.Pressure.Pascals > 101_325);
        Assert.Equal(bar * 1e5, nozzle.Pressure.Pascals - 101_325, tolerance: 3e-11);
    }

    [Fact]
    public void A_nozzle_that_height_keeps_dry_gets_nothing_and_the_answer_holds()
    {
        var result = Documents.Solve(Documents.Water(
            """
            { "id": "J", "kind": "junction" }, { "id": "up", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }, { "id": "down", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }
            """,
            """
            { "from": "S", "to": "J", "bore": "8 mm", "length": "1 m" }, { "from": "J", "to": "up", "bore": "6 mm", "length": "25 m", "rise": "25 m" },
            { "from": "J", "to": "down", "bore": "6 mm", "length": "2 m", "rise": "-2 m" }
            """, pressure: "2 bar"));

        Assert.Equal(0, result.Nozzles[0].MassFlow.KilogramsPerSecond);
        Assert.Equal(1, result.Nozzles[1].Share);
        Assert.True(result.Nozzles[0].Pressure.Pascals < 101_325);
    }
}
