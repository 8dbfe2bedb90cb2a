using FlowCalc.Explanations;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Studies.Comparing;
using FlowCalc.Studies.Sizing;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Tests.Flows;
using FlowCalc.Tests.Studies;

namespace FlowCalc.Tests.Explanations;

/// <summary>Every step of the explanations of studies holds by itself, and together they give the answers.</summary>
public class StudyExplanationTests
{
    static CancellationToken Cancel => TestContext.Current.CancellationToken;

    static void Redo(StudyExplanation explained)
    {
        var steps = explained.Layouts.SelectMany(layout => layout.Steps).Concat(explained.Steps).ToArray();
        RedoneByHand.Check(steps);
        Assert.All(steps, step => RedoneByHand.CheckWorked(step, WorkedLine.Of(step, UnitSystem.Metric)));
        Assert.Equal(steps.Select(step => step.Equation).Distinct().Select(equation => EquationSheet.All.IndexOf(equation)).Order(), explained.Equations.Select(equation => EquationSheet.All.IndexOf(equation)));
    }

    [Fact]
    public void Comparison_explains_every_layout_every_difference_and_the_ranking()
    {
        var request = new CompareRequest(new("base", Documents.Read(Study.Bottle), []), [
            new("wide", Documents.Read(Study.Bottle.Replace("\"bore\": \"4 mm\"", "\"bore\": \"6 mm\"", StringComparison.Ordinal)), []),
            new("same", Documents.Read(Study.Bottle), []),
            new("shut", Documents.Read(Study.Bottle.Replace("\"chargePressure\": \"14 bar\"", "\"chargePressure\": \"0.01 bar\"", StringComparison.Ordinal)), [])]);
        var result = Comparison.Of(request, UnitSystem.Metric, TaskScheduler.Default, Cancel);

        var explained = CompareExplainer.Of(result, Cancel);

        Redo(explained);
        Assert.Equal(16, CompareExplainer.Points(request));
        Assert.Equal(["base", "wide", "same", "shut"], explained.Layouts.Select(layout => layout.Name));
        Assert.All(result.Results.Zip(explained.Layouts), one => Assert.Equal(one.First.Failure is null, !one.Second.Steps.IsEmpty));
        var near = result.Nozzles.Single(nozzle => nozzle.Id == "near");
        ExplanationStep Told(string part) => explained.Steps.Single(step => step.Id == "near" && step.Part == part);
        Assert.Equal((near.Places[1]!.Flow.Pressure - near.Places[0]!.Flow.Pressure).Pascals, Told("wide: pressure").Result.Si, 1e-6);
        Assert.Equal(near.Places[1]!.Flow.MassFlow / near.Places[0]!.Flow.MassFlow - 1, Told("wide: massFlow").Result.Si, 1e-12);
        Assert.Equal(near.Places[1]!.Discharge!.LatestTime95!.Value.Seconds - near.Places[0]!.Discharge!.LatestTime95!.Value.Seconds, Told("wide: latestTime95").Result.Si, 1e-9);
        Assert.Equal(0, Told("same: share").Result.Si);
        // A layout that is behind another is so by a number over nothing, in what the ranking says.
        foreach (var ranked in result.Ranking.Skip(1))
        {
            var behind = explained.Steps.Where(step => step.Equation.Id == "rank-behind" && step.Id == result.Results[ranked.Result].Variant.Name).ToArray();
            Assert.Equal(ranked.By != StandingReason.Order, behind.Length == 1);
            Assert.All(behind, step => Assert.True(step.Result.Si > 0));
        }
    }

    [Theory]
    [InlineData(SizingObjective.FewestChanges, "pieces-exchanged")]
    [InlineData(SizingObjective.LeastCost, "cost-of-run")]
    [InlineData(SizingObjective.LeastMass, "mass-of-a-metre")]
    [InlineData(SizingObjective.BestBalance, "largest-deviation")]
    [InlineData(SizingObjective.ShortestTime, "deviation-of-nozzle")]
    public void Sizes_explain_the_flow_with_them_and_what_the_objective_comes_to(SizingObjective objective, string law)
    {
        var layout = Documents.Read(Study.Bottle);
        static Tube Tube(string name, double bore) => new()
        {
            Name = name,
            Bore = UnitsNet.Length.FromMillimeters(bore),
            Roughness = UnitsNet.Length.FromMicrometers(1.5),
            OutsideDiameter = UnitsNet.Length.FromMillimeters(bore + 2),
            Material = "copper",
        };
        var problem = new SizingProblem
        {
            Layout = layout,
            Tubes = [.. new[] { Tube("thin", 5), Tube("thick", 7) }.Select(tube => new TubeOption(tube, tube.Bore.Millimeters / 2, TubeMass.PerMetre(tube)))],
            Groups = [new([1], []), new([2], [])],
            Wish = new() { Deviation = 0.3 },
            Objective = objective,
        };
        var result = LayoutSizing.Solve(problem, Cancel);
        Assert.True(result.IsPossible);

        var explained = SizeExplainer.Of(problem, result, result.Best!.Layout, result.Best.Flow, Cancel);

        Redo(explained);
        Assert.Equal(SizeExplainer.Sized, Assert.Single(explained.Layouts).Name);
        Assert.Contains(explained.Steps, step => step.Equation.Id == law);
        if (explained.Steps.SingleOrDefault(step => step is { Part: "objective, after", Result.Symbol: "V" }) is { } whole) Assert.Equal(result.Best.Value!.Value, whole.Result.Si, 1e-9);
        else Assert.Equal(SizingObjective.ShortestTime, objective);
        Assert.Equal(Math.Max(0, result.Best.Value!.Value - result.Bound), explained.Steps.Single(step => step.Equation.Id == "objective-gap").Result.Si, 1e-12);
    }

    [Fact]
    public void Sizes_that_nothing_meets_say_so()
    {
        var layout = Documents.Read(Study.Bottle);
        var problem = new SizingProblem { Layout = layout, Groups = [new([1], [])], Wish = new() { Deviation = 1e-6 }, Objective = SizingObjective.FewestChanges };
        var result = LayoutSizing.Solve(problem, Cancel);

        var explained = SizeExplainer.Of(problem, result, null, null, Cancel);

        Assert.False(result.IsPossible);
        Redo(explained);
        Assert.Empty(explained.Layouts);
        Assert.Contains(explained.LeftOut, text => text.StartsWith("No sizes meet the wish", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(StudiedAnswer.Flow)]
    [InlineData(StudiedAnswer.Discharge)]
    public void Study_explains_percentiles_chances_and_indices(StudiedAnswer answer)
    {
        var question = Study.Ask(Study.Bottle, answer, samples: 150);
        var result = Study.Run(question);

        var explained = ToleranceExplainer.Of(question, result, Cancel);

        Redo(explained);
        var one = result.Cases[0];
        foreach (var (spreads, place, id) in new[] { (one.Figures, ExplainedPlace.Layout, "design"), (one.Nozzles[0].Figures, ExplainedPlace.Point, "near"), (one.Zones[0].Figures, ExplainedPlace.Zone, "cab") })
            foreach (var (figure, summary) in spreads)
                foreach (var (told, percent) in new[] { (summary.P05, 5), (summary.P50, 50), (summary.P95, 95) })
                    if (told is { } percentile)
                        Assert.Equal(percentile, explained.Steps.Single(step => step.Place == place && step.Id == id && step.Equation.Id == "percentile" && step.Part == $"case 0, {SpreadWords.Of(figure)}: {percent} %").Result.Si);
        foreach (var sensitivity in result.Sensitivities)
            foreach (var (path, index) in sensitivity.Inputs)
            {
                var own = explained.Steps.Where(step => step.Id == path && step.Part == $"case 0, {SpreadWords.Of(sensitivity.Figure)}").ToDictionary(step => step.Equation.Id, step => step.Result.Si);
                Assert.Equal(index.Value, own["first-order-index"]);
                Assert.Equal(index.StandardError, own["index-error"]);
            }
        foreach (var found in result.Findings)
            Assert.Contains(explained.Steps, step => step.Equation.Id == "chance-high" && step.Id == found.Code && step.Result.Si == found.Chance.High);
        Assert.Equal(4, ToleranceExplainer.Points(question));
    }

    [Fact]
    public void Points_of_a_study_of_every_case_count_in_every_case()
    {
        var question = Study.Ask(Study.Bottle.Replace("\"tubes\"", "\"cases\": { \"temperatures\": [\"10 °C\", \"20 °C\", \"40 °C\"], \"attitudes\": [{ \"name\": \"upright\", \"gravity\": [0, 0, -1] }] }, \"tubes\"", StringComparison.Ordinal), StudiedAnswer.Discharge);

        Assert.Equal(4, ToleranceExplainer.Points(question));
        Assert.Equal(12, ToleranceExplainer.Points(question with { IsEveryCase = true }));
    }

    // By hand: of a flow that goes with the root of the pressure alone, the design's steps are those of the call itself.
    [Fact]
    public void Design_of_a_study_is_explained_as_its_flow_is()
    {
        var question = Study.Ask(Study.Plain, samples: 100, spreads: ("points/N/kFactor", thing => FlowCalc.Studies.Sampling.Distribution.Uniform(thing.Design, thing.Design * 0.9, thing.Design * 1.1)));

        var explained = ToleranceExplainer.Of(question, Study.Run(question), Cancel);

        var flow = FlowExplainer.Of(question.Layout, SteadyFlow.Solve(question.Layout, Cancel), Cancel);
        Assert.Equal(flow.Steps.Select(step => step.Result), Assert.Single(explained.Layouts).Steps.Select(step => step.Result));
    }
}
