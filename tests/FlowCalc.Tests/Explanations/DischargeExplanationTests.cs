using System.Text.Json.Nodes;
using FlowCalc.Discharge;
using FlowCalc.Examples;
using FlowCalc.Explanations;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Explanations;

/// <summary>The start of every case of a discharge, redone by hand.</summary>
public class DischargeExplanationTests
{
    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name).Where(name => Documents.Read(Example(name)).Supply is BottleSupply)];

    static string Example(string name) => System.Text.Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);

    static (Layout Layout, DischargeResult Discharge, DischargeExplanation Explained) Explain(string json)
    {
        var layout = Documents.Read(json);
        var discharge = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);
        return (layout, discharge, DischargeExplainer.Of(layout, discharge, TestContext.Current.CancellationToken));
    }

    static void Check(DischargeExplanation explained) => Assert.All(explained.Cases, one => RedoneByHand.Check(one.Steps));

    static string Water(string bottle, string more = "") => Documents.Water(
        """{ "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" }, { "id": "A", "kind": "nozzle", "kFactor": "2 L/min/bar^0.5" }, { "id": "B", "kind": "nozzle", "kFactor": "3 L/min/bar^0.5" }""",
        """
        { "from": "S", "to": "T", "bore": "8 mm", "length": "1 m", "rise": "0.3 m" }, { "from": "T", "to": "A", "bore": "6 mm", "length": "1 m" }, { "from": "T", "to": "B", "bore": "6 mm", "length": "2 m" }
        """, more).Replace("""{ "pressure": "10 bar" }""", $$"""{ "bottle": {{bottle}} }""", StringComparison.Ordinal);

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_step_of_every_case_of_an_example_is_redone_by_hand(string name)
    {
        var (_, discharge, explained) = Explain(Example(name));

        Check(explained);
        Assert.Equal(discharge.Cases.Select(one => (one.Temperature, one.Attitude.Name)), explained.Cases.Select(one => (one.Temperature, one.Attitude)));
        foreach (var (one, told) in discharge.Cases.Zip(explained.Cases))
        {
            Assert.Equal(one.Failure is null, told.Steps.Length > 0);
            if (one.Failure is null && told.Steps.FirstOrDefault(step => step.Result.Symbol == "p") is { Equation.Id: "bottle-pressure" } pressure)
                Assert.Equal(one.StartPressure!.Value.Pascals, told.Steps.Last(step => step.Equation.Id == "bottle-pressure").Result.Si, tolerance: 1e-9 * pressure.Result.Si);
        }
    }

    [Theory]
    [MemberData(nameof(GasDocuments.Agents), MemberType = typeof(GasDocuments))]
    public void Start_of_a_discharge_of_a_gas_or_of_what_boils_is_redone_by_hand(string agent)
    {
        var (_, _, explained) = Explain(GasDocuments.Tree(agent, """ "cases": { "temperatures": ["20 °C", "50 °C"] }, """));

        Check(explained);
        Assert.Contains(explained.Cases, one => one.States.Length > 0 && one.Steps[^1].Equation.Id == "contents-rate");
    }

    [Fact]
    public void Pressure_when_the_dip_tube_uncovers_is_the_one_that_the_discharge_found()
    {
        foreach (var heat in (string[])["isothermal", "adiabatic", "wall"])
        {
            var (layout, discharge, explained) = Explain(Water($$"""
                { "volume": "3 L", "fill": "1.8 kg", "chargePressure": "14 bar", "cushionHeat": "{{heat}}", "shape": { "diameter": "100 mm", "length": "382 mm" },
                  "outlet": { "dipTube": { "bore": "8 mm", "length": "370 mm" }, "valveKv": "2 m3/h" } }
                """, """ "cases": { "temperatures": ["20 °C"], "attitudes": [ { "name": "upright", "gravity": [0, 0, -1] } ] }, """));

            Check(explained);
            var one = discharge.Cases.Single();
            var at = Array.FindLastIndex([.. one.Series!.Time], time => time.Seconds <= one.LiquidEnd!.Value.Seconds + 1e-9);
            var told = explained.Cases.Single().Steps.Single(step => step.Equation.Id == "cushion-law").Result.Si;
            // The curve is thinned: the moment lies between two of its times.
            Assert.InRange(told, one.Series.BottlePressure[at + 1].Pascals, one.Series.BottlePressure[at].Pascals);
            var cools = explained.Cases.Single().Steps.Any(step => step.Equation.Id == "cushion-temperature-rate");
            Assert.Equal(heat != "isothermal", cools);
        }
    }

    [Fact]
    public void Bottles_side_by_side_regulators_and_restrictors_are_redone_by_hand()
    {
        foreach (var more in (string[])[
            """ "count": 2, "outlet": { "dipTube": { "bore": "8 mm", "length": "300 mm", "follows": true }, "valveKv": "2 m3/h", "restrictor": { "diameter": "5 mm", "dischargeCoefficient": 0.7 } } """,
            """ "outlet": { "dipTube": { "bore": "8 mm", "length": "300 mm", "follows": true }, "regulator": { "setPressure": "6 bar", "kv": "3 m3/h" } } """])
        {
            var (_, _, explained) = Explain(Water($$"""{ "volume": "3 L", "fill": "2 kg", "chargePressure": "14 bar", "shape": { "diameter": "100 mm", "length": "382 mm" }, {{more}} }"""));

            Check(explained);
        }
    }

    [Fact]
    public void A_case_without_a_discharge_has_no_steps_and_one_that_draws_gas_first_no_flow()
    {
        var (_, discharge, explained) = Explain(Water(
            """{ "volume": "3 L", "fill": "1.2 kg", "chargePressure": "14 bar", "shape": { "diameter": "100 mm", "length": "382 mm" }, "outlet": { "dipTube": { "bore": "8 mm", "length": "370 mm" } } }""",
            """ "cases": { "temperatures": ["-5 °C", "20 °C"], "attitudes": [ { "name": "on the roof", "gravity": [0, 0, 1] } ] }, """));

        Assert.NotNull(discharge.Cases[0].Failure);
        Assert.Empty(explained.Cases[0].Steps);
        Assert.NotEmpty(explained.Cases[1].Steps);
        Assert.DoesNotContain(explained.Cases[1].Steps, step => step.Equation.Id == "nozzle-flow");
        Check(explained);
    }

    [Fact]
    public void Points_to_explain_are_those_of_the_layout_in_every_case()
    {
        var node = JsonNode.Parse(Water("""{ "volume": "3 L", "fill": "1.2 kg", "chargePressure": "14 bar" }"""))!;
        node["cases"] = JsonNode.Parse("""{ "temperatures": ["10 °C", "20 °C", "30 °C"], "attitudes": [ { "name": "a", "gravity": [0, 0, -1] }, { "name": "b", "gravity": [0, 0, 1] } ] }""");

        Assert.Equal(4 * 3 * 2, DischargeExplainer.Points(Documents.Read(node.ToJsonString())));
    }
}
