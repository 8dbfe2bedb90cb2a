using FlowCalc.Findings;
using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Tests.Studies;

namespace FlowCalc.Tests.ClosedForms.Studies;

/// <summary>A nozzle straight on its supply, m = ρ K √(p ρ0 / ρ): what goes in comes out by that law.</summary>
public class OutletSpreadTests
{
    const double Score = 1.6448536269514722;

    [Fact]
    public void Normal_K_factor_gives_a_normal_flow()
    {
        var result = Study.Run(Study.Ask(Study.Plain, samples: 5_000, spreads: ("points/N/kFactor", thing => Distribution.Normal(thing.Design, 0.02 * thing.Design))));

        var flow = result.Cases[0].Figures.Of(Figure.MassFlow);
        var design = flow.Design!.Value;
        // Strata keep percentiles of one input within a stratum or two of 1/5000.
        Assert.Equal(1, flow.P50!.Value / design, tolerance: 1e-5);
        Assert.Equal(1 - 0.02 * Score, flow.P05!.Value / design, tolerance: 1e-4);
        Assert.Equal(1 + 0.02 * Score, flow.P95!.Value / design, tolerance: 1e-4);
        Assert.Equal(1, flow.Mean!.Value / design, tolerance: 1e-5);
        // Cut at four, the deviation is 0.05 % less.
        Assert.Equal(0.02 * 0.99946, flow.StandardDeviation!.Value / design, tolerance: 1e-5);
        Assert.InRange(flow.Least!.Value / design, 0.92, 0.935);
        Assert.InRange(flow.Greatest!.Value / design, 1.065, 1.08);
    }

    [Fact]
    public void What_one_input_moves_it_explains()
    {
        var result = Study.Run(Study.Ask(Study.Plain, spreads: ("points/N/kFactor", thing => Distribution.Uniform(thing.Design, 0.9 * thing.Design, 1.1 * thing.Design))));

        var flow = result.Sensitivities.Single(one => one.Figure == Figure.MassFlow);
        Assert.InRange(Assert.Single(flow.Inputs).Index.Value, 0.99, 1);
        Assert.StartsWith("points/N/kFactor matters most to the whole flow", flow.Statement, StringComparison.Ordinal);
        // The only nozzle always has all of it.
        Assert.Empty(result.Sensitivities.Single(one => one.Figure == Figure.LowestDeviation).Inputs);
    }

    // Linearised, the share of one of two nozzles without loss moves by (1 − s) of its own K and −(1 − s) of the other's: both explain half.
    [Fact]
    public void Two_equal_nozzles_explain_half_of_each_share()
    {
        var document = Flows.Documents.Water(
            """{ "id": "J", "kind": "junction" }, { "id": "M", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "share": 0.5 }, { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "share": 0.5 }""",
            """{ "id": "R", "from": "S", "to": "J", "bore": "100 mm", "length": "0.01 m" }, { "id": "A", "from": "J", "to": "M", "bore": "100 mm", "length": "0.01 m" }, { "id": "B", "from": "J", "to": "N", "bore": "100 mm", "length": "0.01 m" }""");
        Func<SpreadThing, Distribution> two = thing => Distribution.Normal(thing.Design, 0.02 * thing.Design);

        var result = Study.Run(Study.Ask(document, samples: 10_000, spreads: [("points/M/kFactor", two), ("points/N/kFactor", two)]));

        var share = result.Cases[0].Nozzles[0].Figures.Of(Figure.Share);
        // σ(s) = s (1 − s) √2 · 2 %.
        Assert.Equal(0.25 * Math.Sqrt(2) * 0.02, share.StandardDeviation!.Value, tolerance: 1e-4);
        Assert.Equal(0.5, share.Mean!.Value, tolerance: 1e-5);
        var flow = result.Sensitivities.Single(one => one.Figure == Figure.MassFlow);
        Assert.All(flow.Inputs, input => Assert.Equal(0.5, input.Index.Value, tolerance: 4 * input.Index.StandardError + 0.005));
    }

    // The wish is the design's: a nozzle that turns out larger gets more than it should.
    [Fact]
    public void Wanted_share_does_not_follow_the_K_factor_of_a_sample()
    {
        var document = Flows.Documents.Water(
            """{ "id": "J", "kind": "junction" }, { "id": "M", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }, { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }""",
            """{ "id": "R", "from": "S", "to": "J", "bore": "100 mm", "length": "0.01 m" }, { "id": "A", "from": "J", "to": "M", "bore": "100 mm", "length": "0.01 m" }, { "id": "B", "from": "J", "to": "N", "bore": "100 mm", "length": "0.01 m" }""");

        var result = Study.Run(Study.Ask(document, spreads: ("points/M/kFactor", thing => Distribution.Uniform(thing.Design, thing.Design, 1.5 * thing.Design))));

        // At the most 1.5 of 2.5 instead of a half.
        Assert.Equal(1.5 / 2.5 / 0.5 - 1, result.Cases[0].Nozzles[0].Figures.Of(Figure.Deviation).Greatest!.Value, tolerance: 1e-3);
        Assert.Equal(0.5, result.Cases[0].Nozzles[0].WantedShare);
        Assert.Equal(0, result.Cases[0].Nozzles[0].Figures.Of(Figure.Deviation).Design!.Value, tolerance: 1e-4);
    }

    // Overfed beyond 10 % warns: K over 1.1/0.9 of the other's, 0.4444 of the way from 1 to 1.5. Beyond 20 % fails: 1.5, which is never passed.
    [Fact]
    public void Chance_of_a_finding_is_the_part_of_its_spread_beyond_the_limit()
    {
        var document = Flows.Documents.Water(
            """{ "id": "J", "kind": "junction" }, { "id": "M", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "share": 0.5 }, { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "share": 0.5 }""",
            """{ "id": "R", "from": "S", "to": "J", "bore": "100 mm", "length": "0.01 m" }, { "id": "A", "from": "J", "to": "M", "bore": "100 mm", "length": "0.01 m" }, { "id": "B", "from": "J", "to": "N", "bore": "100 mm", "length": "0.01 m" }""");

        var result = Study.Run(Study.Ask(document, samples: 2_000, spreads: ("points/M/kFactor", thing => Distribution.Uniform(thing.Design, thing.Design, 1.5 * thing.Design))));

        var overfed = result.Findings.Single(found => found is { Code: "overfed-nozzle", Where: "M" });
        Assert.Equal(Severity.Warn, overfed.Severity);
        Assert.Equal(1 - 0.4444, overfed.Chance.Part, tolerance: 0.002);
        Assert.Equal(result.Verdicts.Single(verdict => verdict.Severity == Severity.Warn).Chance, overfed.Chance);
    }
}
