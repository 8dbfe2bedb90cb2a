using CsCheck;
using FlowCalc.Examples;
using FlowCalc.Explanations;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Quantities;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Explanations;

/// <summary>Every step of the explanation of a steady flow holds by itself, and together they give the answer.</summary>
public class FlowExplanationTests
{
    static readonly Gen<int> Seed = Gen.Int[0, int.MaxValue - 1];

    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    static (Layout Layout, FlowResult Flow, FlowExplanation Explained) Explain(string json)
    {
        var layout = Documents.Read(json);
        var flow = SteadyFlow.Solve(layout, CancellationToken.None);
        Assert.True(flow.Report.Converged, flow.Report.Failure);
        return (layout, flow, FlowExplainer.Of(layout, flow, CancellationToken.None));
    }

    static string Example(string name) => System.Text.Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_step_of_an_example_is_redone_by_hand_and_adds_up_to_the_answer(string name)
    {
        var (layout, flow, explained) = Explain(Example(name));

        RedoneByHand.Check(explained.Steps);
        AnswersAgree(layout, flow, explained);
        foreach (var system in Enum.GetValues<UnitSystem>())
            Assert.All(explained.Steps, step => RedoneByHand.CheckWorked(step, WorkedLine.Of(step, system)));
    }

    [Fact]
    public void Every_step_of_any_layout_is_redone_by_hand_and_adds_up_to_the_answer() =>
        Seed.Sample(seed =>
        {
            var (layout, flow, explained) = Explain(new RandomLayout(seed).Document(pressure: seed % 4 == 0 ? "0.02 bar" : "10 bar"));

            RedoneByHand.Check(explained.Steps);
            AnswersAgree(layout, flow, explained);
        }, iter: 300);

    [Theory]
    [MemberData(nameof(GasDocuments.Agents), MemberType = typeof(GasDocuments))]
    public void Every_step_of_a_gas_or_of_what_boils_is_redone_by_hand_and_adds_up_to_the_answer(string agent)
    {
        foreach (var model in (string[])["delayed", "equilibrium", "frozen"])
        {
            var (layout, flow, explained) = Explain(GasDocuments.Tree(agent, $$""" "model": { "nozzles": "{{model}}" }, """));

            RedoneByHand.Check(explained.Steps);
            AnswersAgree(layout, flow, explained);
            Assert.NotEmpty(explained.States);
        }
    }

    [Fact]
    public void Losses_of_an_agent_with_several_bottles_and_a_regulator_are_redone_by_hand()
    {
        foreach (var outlet in (string[])[
            """ , "count": 3, "outlet": { "dipTube": { "bore": "8 mm", "length": "0.3 m" }, "valveKv": "2 m3/h", "restrictor": { "diameter": "6 mm", "dischargeCoefficient": 0.7 } } """,
            """ , "outlet": { "valveKv": "2 m3/h", "regulator": { "setPressure": "12 bar", "kv": "3 m3/h" } } """])
        {
            var (layout, flow, explained) = Explain(GasDocuments.Tree("nitrogen", bottle: outlet));

            RedoneByHand.Check(explained.Steps);
            AnswersAgree(layout, flow, explained);
        }
    }

    [Fact]
    public void Every_state_of_flow_has_its_own_law_of_friction()
    {
        string Run(string viscosity) => $$"""
            { "format": 1, "agent": { "density": "1000 kg/m3", "viscosity": "{{viscosity}}" }, "supply": { "pressure": "5 bar" },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "N", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" } ],
              "runs": [ { "id": "R", "from": "S", "to": "N", "bore": "6 mm", "length": "2 m", "bends": [ { "angle": "90°", "radius": "18 mm" } ] } ] }
            """;

        foreach (var (viscosity, regime, law) in ((string, FlowRegime, string)[])[
            ("100 mPa·s", FlowRegime.Laminar, "friction-laminar"), ("5 mPa·s", FlowRegime.Transition, "friction-transition"), ("1 mPa·s", FlowRegime.Turbulent, "friction-turbulent")])
        {
            var (_, flow, explained) = Explain(Run(viscosity));

            Assert.Equal(regime, flow.Runs[0].Regime);
            RedoneByHand.Check(explained.Steps);
            Assert.Equal(law, explained.Steps.Single(step => step is { Part: "tube", Result.Symbol: "f" }).Equation.Id);
        }
    }

    [Fact]
    public void Tees_say_which_law_they_follow_and_with_which_shares_and_bores()
    {
        var (_, _, explained) = Explain(Documents.Water(
            """
            { "id": "T", "kind": "tee", "fedThrough": "run", "body": "threaded" }, { "id": "B", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "N1", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }, { "id": "N2", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }, { "id": "N3", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }
            """,
            """
            { "id": "R1", "from": "S", "to": "T", "bore": "8 mm", "length": "1 m" },
            { "id": "R2", "from": "T", "to": "N1", "leaves": "run", "bore": "6 mm", "length": "1 m" }, { "id": "R3", "from": "T", "to": "B", "leaves": "branch", "bore": "10 mm", "length": "1 m" },
            { "id": "R4", "from": "B", "to": "N2", "bore": "6 mm", "length": "1 m" }, { "id": "R5", "from": "B", "to": "N3", "bore": "6 mm", "length": "1 m" }
            """));

        RedoneByHand.Check(explained.Steps);
        foreach (var (run, law) in ((string, string)[])[("R2", "tee-run"), ("R3", "tee-branch"), ("R4", "tee-bullhead"), ("R5", "tee-bullhead")])
            Assert.Contains(explained.Steps, step => step.Id == run && step.Equation.Id == law);
        Assert.Equal(["mass-balance", "mass-balance"], explained.Steps.Where(step => step.Equation.Id == "mass-balance").Select(step => step.Equation.Id));
    }

    [Fact]
    public void Fittings_and_steps_of_every_kind_are_redone_by_hand()
    {
        var (layout, flow, explained) = Explain(Documents.Water(
            """
            { "id": "W", "kind": "reducer" }, { "id": "V", "kind": "reducer" }, { "id": "J", "kind": "junction" }, { "id": "C", "kind": "cap" },
            { "id": "N", "kind": "nozzle", "orifice": { "diameter": "2 mm", "dischargeCoefficient": 0.7, "count": 2 } }
            """,
            """
            { "id": "R1", "from": "S", "to": "W", "bore": "6 mm", "length": "1 m", "lossCoefficient": 2.5, "fittings": [
              { "fitting": { "kind": "union", "bore": "4 mm", "length": "3 mm" }, "count": 2 }, { "kind": "union", "bore": "4.5 mm", "length": "30 mm" }, { "kind": "bulkhead-union", "bore": "5 mm", "length": "45 mm" },
              { "kind": "elbow", "angle": "45°", "bore": "5 mm", "length": "20 mm" }, { "kind": "elbow", "bore": "6 mm", "length": "20 mm" }, { "kind": "strainer", "kv": "1 m3/h" }, { "kind": "check-valve", "lossCoefficient": 3 } ] },
            { "id": "R2", "from": "W", "to": "V", "bore": "8 mm", "length": "1 m" }, { "id": "R3", "from": "V", "to": "J", "bore": "5 mm", "length": "0.5 m" },
            { "id": "R4", "from": "J", "to": "N", "bore": "5 mm", "length": "0.5 m" }, { "id": "R5", "from": "J", "to": "C", "bore": "5 mm", "length": "0.5 m", "rise": "0.2 m", "bends": [ { "angle": "60°", "radius": "15 mm" } ],
              "fittings": [ { "kind": "union", "bore": "4 mm", "length": "30 mm" } ] }
            """));

        RedoneByHand.Check(explained.Steps);
        AnswersAgree(layout, flow, explained);
        foreach (var law in (string[])["thick-orifice-tau", "thick-orifice", "sharp-contraction", "sudden-expansion", "sharp-turn", "kv-loss", "coefficient-loss", "orifice-area"])
            Assert.Contains(explained.Steps, step => step.Equation.Id == law);
        Assert.Equal(["rise", "drop-of-run", "end-pressure"], explained.Steps.Where(step => step.Id == "R5").Select(step => step.Equation.Id));
    }

    [Fact]
    public void A_nozzle_that_height_keeps_dry_says_so()
    {
        var (layout, flow, explained) = Explain(Documents.Water(
            """{ "id": "T", "kind": "tee", "fedThrough": "run", "body": "smooth" }, { "id": "low", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }, { "id": "high", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }""",
            """
            { "from": "S", "to": "T", "bore": "8 mm", "length": "1 m" }, { "from": "T", "to": "low", "leaves": "run", "bore": "6 mm", "length": "1 m" },
            { "from": "T", "to": "high", "leaves": "branch", "bore": "6 mm", "length": "3 m", "rise": "3 m" }
            """, pressure: "0.1 bar"));

        RedoneByHand.Check(explained.Steps);
        AnswersAgree(layout, flow, explained);
        Assert.Contains(explained.Steps, step => step.Id == "high" && step.Equation.Id == "dry-nozzle");
    }

    [Fact]
    public void A_flow_that_was_not_found_has_no_explanation()
    {
        var layout = Documents.Read(Documents.Water("""{ "id": "N", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }""", """{ "from": "S", "to": "N", "bore": "8 mm", "length": "1 m" }"""));
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);

        Assert.Throws<ArgumentException>("flow", () => FlowExplainer.Of(layout, flow with { Liquid = null }, CancellationToken.None));
    }

    static void AnswersAgree(Layout layout, FlowResult flow, FlowExplanation explained)
    {
        var ambient = layout.AmbientPressure.Pascals;
        var scale = flow.Supply!.ReservoirPressure.Pascals;
        for (var i = 0; i < layout.Runs.Length; i++)
        {
            var steps = explained.Steps.Where(step => step.Place == ExplainedPlace.Run && step.Id == layout.Runs[i].Id).ToArray();
            LossesAgree(flow.Runs[i].Losses, steps, scale);
            Assert.Equal(flow.Runs[i].Losses.Total.Pascals, Result(steps, "drop-of-run"), tolerance: 1e-9 * scale);
            Assert.Equal(flow.PointPressures[layout.Runs[i].To].Pascals - ambient, Result(steps, "end-pressure"), tolerance: 1e-9 * scale);
            if (flow.Runs[i].Reynolds != 0 && explained.States.IsEmpty)
                Assert.Equal(flow.Runs[i].Reynolds, steps.First(step => step is { Part: "tube", Equation.Id: "reynolds" }).Result.Si, tolerance: 1e-9 * flow.Runs[i].Reynolds);
        }
        foreach (var nozzle in flow.Nozzles)
        {
            var steps = explained.Steps.Where(step => step.Place == ExplainedPlace.Point && step.Id == layout.Points[nozzle.Point].Id).ToArray();
            var flowStep = steps.Single(step => step.Part == "flow");
            Assert.Equal(nozzle.MassFlow.KilogramsPerSecond, flowStep.Result.Si, tolerance: 1e-7 * Math.Abs(flow.Supply.MassFlow.KilogramsPerSecond));
            var way = steps.Single(step => step.Equation.Id == "drop-of-path");
            Assert.Equal((flow.Supply.ReservoirPressure - nozzle.Pressure).Pascals, way.Result.Si, tolerance: 1e-9 * scale);
            double[] kinds = [.. Kinds(nozzle.Losses)];
            Assert.All(kinds.Index(), kind => Assert.Equal(kind.Item, way.Values[kind.Index].Si, tolerance: 1e-9 * scale));
        }
    }

    static void LossesAgree(LossBreakdown losses, ExplanationStep[] steps, double scale)
    {
        foreach (var (kind, booked) in Enum.GetValues<LossKind>().Zip(Kinds(losses)))
            Assert.Equal(booked, steps.Where(step => step.CountsAs == kind).Sum(step => step.Result.Si), tolerance: 1e-9 * scale);
    }

    static double Result(ExplanationStep[] steps, string equation) => steps.Single(step => step.Equation.Id == equation).Result.Si;

    static IEnumerable<double> Kinds(LossBreakdown losses) =>
        new[] { losses.Outlet, losses.Tube, losses.Bends, losses.Tees, losses.Fittings, losses.BoreChanges, losses.Rise }.Select(pressure => pressure.Pascals);
}
