using System.Text;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Studies;
using FlowCalc.Studies.Reading;
using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Tests.Studies;

public class ToleranceReaderTests
{
    static readonly ToleranceLimits Limits = new(100_000, 20_000, 20_000_000);

    [Fact]
    public void Request_without_spreads_takes_the_usual_ones_and_says_so()
    {
        var question = Good($$"""{ "layout": {{Study.Bottle}} }""");

        Assert.Equal((StudiedAnswer.Flow, ToleranceQuestion.UsualSamples, ToleranceQuestion.UsualSeed, false), (question.Answer, question.Samples, question.Seed, question.IsEveryCase));
        Assert.Equal(["tubes/feed/bore", "runs/B/bore", "runs/C/bore", "tubes/feed/roughness", "runs/B/roughness", "runs/C/roughness", "runs/A/length", "runs/B/length", "runs/C/length",
            "points/near/kFactor", "points/far/kFactor", "supply/bottle/chargePressure", "supply/bottle/fill"], question.Variables.Select(variable => variable.Thing.Path));
        Assert.All(question.Variables, variable => Assert.Equal("common practice, no source", variable.Source));
        Assert.Equal(["/spreads/bore", "/spreads/roughness", "/spreads/length", "/spreads/kFactor", "/spreads/chargePressure", "/spreads/fill", "/spreads/temperature", "/samples", "/seed"],
            question.Assumptions.Select(assumption => assumption.Pointer));
    }

    [Fact]
    public void Usual_spread_that_is_not_possible_leaves_the_thing_as_designed_and_says_so()
    {
        // Two quarter bends of 20 mm take 62.8 mm: 65 mm may not be 5 mm less.
        var question = Good($$"""{ "layout": {{Study.Bottle.Replace("2.4 m\", \"rise\": \"-0.4 m", "65 mm\", \"rise\": \"0 m", StringComparison.Ordinal)}} }""");

        Assert.DoesNotContain(question.Variables, variable => variable.Thing.Path == "runs/C/length");
        Assert.Contains(question.Assumptions, assumption => assumption.Pointer == "/spreads/runs/C/length" && assumption.Value.StartsWith("stays as designed", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("runs/A/length", """{ "uniform": "10 mm" }""", DistributionShape.Uniform, 1.19, 1.21)]
    [InlineData("runs/A/length", """{ "uniform": 0.05 }""", DistributionShape.Uniform, 1.14, 1.26)]
    [InlineData("runs/A/length", """{ "triangular": [-0.05, 0] }""", DistributionShape.Triangular, 1.14, 1.2)]
    [InlineData("runs/A/length", """{ "triangular": ["1.1 m", { "value": 1250, "unit": "mm" }] }""", DistributionShape.Triangular, 1.1, 1.25)]
    [InlineData("tubes/feed/bore", """{ "normal": "0.1 mm" }""", DistributionShape.Normal, 0.0076, 0.0084)]
    [InlineData("tubes/feed/bore", """{ "normal": 0.01 }""", DistributionShape.Normal, 0.00768, 0.00832)]
    // Of the gauge pressure, and at 1.01325 bara around.
    [InlineData("supply/bottle/chargePressure", """{ "uniform": 0.1 }""", DistributionShape.Uniform, 12.6e5 + 101_325, 15.4e5 + 101_325)]
    [InlineData("supply/bottle/chargePressure", """{ "uniform": "1 bar" }""", DistributionShape.Uniform, 13e5 + 101_325, 15e5 + 101_325)]
    [InlineData("supply/bottle/chargePressure", """{ "uniform": ["13 bar", "16 bara"] }""", DistributionShape.Uniform, 13e5 + 101_325, 16e5)]
    [InlineData("supply/bottle/fill", """{ "uniform": "50 g" }""", DistributionShape.Uniform, 1.55, 1.65)]
    [InlineData("temperature", """{ "uniform": "5 K" }""", DistributionShape.Uniform, 288.15, 298.15)]
    [InlineData("temperature", """{ "triangular": ["10 °C", "68 °F"] }""", DistributionShape.Triangular, 283.15, 293.15)]
    public void Spread_is_read_in_each_of_its_forms(string path, string spread, DistributionShape shape, double low, double high)
    {
        var question = Good($$"""{ "layout": {{Study.Bottle}}, "spreads": { "{{path}}": {{spread}} } }""");

        var variable = Assert.Single(question.Variables);
        Assert.Equal((path, shape, "stated in the request"), (variable.Thing.Path, variable.Values.Shape, variable.Source));
        Assert.Equal(low, variable.Values.Low, tolerance: 1e-9 * high);
        Assert.Equal(high, variable.Values.High, tolerance: 1e-9 * high);
    }

    [Fact]
    public void What_is_said_of_one_thing_stands_before_what_is_said_of_its_kind_in_any_order()
    {
        const string kind = """ "length": { "uniform": 0.01 } """, own = """ "runs/B/length": { "uniform": 0.02 } """;

        foreach (var spreads in (string[])[$"{kind}, {own}", $"{own}, {kind}"])
        {
            var question = Good($$"""{ "spreads": { {{spreads}} }, "layout": {{Study.Bottle}} }""");

            Assert.Equal(["runs/A/length", "runs/B/length", "runs/C/length"], question.Variables.Select(variable => variable.Thing.Path));
            Assert.Equal([0.024, 0.02, 0.048], question.Variables.Select(variable => Math.Round(variable.Values.High - variable.Values.Low, 9)));
        }
    }

    [Theory]
    [InlineData("""{ "bore": { "normal": 0 } }""", "/spreads/bore/normal", "over 0 to 1")]
    [InlineData("""{ "bore": { "normal": -0.01 } }""", "/spreads/bore/normal", "over 0 to 1")]
    [InlineData("""{ "bore": { "normal": "0 mm" } }""", "/spreads/bore/normal", "a spread is over 0")]
    [InlineData("""{ "bore": { "uniform": "1 bar" } }""", "/spreads/bore/uniform", "length takes")]
    [InlineData("""{ "bore": { "normal": [0.1, 0.2] } }""", "/spreads/bore/normal", "alike to both sides")]
    [InlineData("""{ "bore": { "uniform": [0.1] } }""", "/spreads/bore/uniform", "two ends")]
    [InlineData("""{ "bore": { "uniform": [0.2, 0.1] } }""", "/spreads/bore/uniform", "the lower end comes first")]
    [InlineData("""{ "bore": { "uniform": [0.1, 0.2] } }""", "/spreads/bore", "does not lie between the ends")]
    [InlineData("""{ "bore": { "uniform": [-0.1, "9 mm"] } }""", "/spreads/bore/uniform/0", "a bare number")]
    [InlineData("""{ "bore": { "normal": 0.3 } }""", "/spreads/bore", "not possible")]
    [InlineData("""{ "bore": {} }""", "/spreads/bore", "read 0 of")]
    [InlineData("""{ "bore": { "normal": 0.01, "uniform": 0.01 } }""", "/spreads/bore", "read 2 of")]
    [InlineData("""{ "bore": { "normale": 0.01 } }""", "/spreads/bore/normale", "did you mean 'normal'")]
    [InlineData("""{ "bore": 0.01 }""", "/spreads/bore", "a spread is an object")]
    [InlineData("""{ "width": { "normal": 0.01 } }""", "/spreads/width", "a kind, or a path that ends in one")]
    [InlineData("""{ "bor": { "normal": 0.01 } }""", "/spreads/bor", "did you mean 'bore'")]
    [InlineData("""{ "runs/D/length": { "normal": 0.01 } }""", "/spreads/runs~1D~1length", "names nothing in this layout; did you mean")]
    [InlineData("""{ "runs/A/bore": { "normal": 0.01 } }""", "/spreads/runs~1A~1bore", "tubes/feed/bore is one for all its runs")]
    [InlineData("""{ "runs//length": { "normal": 0.01 } }""", "/spreads/runs~1~1length", "a name of it is empty")]
    [InlineData("""{ "temperature": { "normal": 0.01 } }""", "/spreads/temperature/normal", "a part of a temperature means nothing")]
    [InlineData("""{ "temperature": { "normal": "5 °C" } }""", "/spreads/temperature/normal", "is in K")]
    [InlineData("""{ "temperature": { "uniform": "50 K" } }""", "/spreads/temperature", "freezes")]
    [InlineData("""{ "chargePressure": { "normal": "1 bara" } }""", "/spreads/chargePressure/normal", "counts from no vacuum")]
    [InlineData("""{ "chargePressure": { "uniform": 1 } }""", "/spreads/chargePressure", "over the ambient pressure")]
    [InlineData("""{ "fill": { "uniform": 0.6 } }""", "/spreads/fill", "leave the gas any room")]
    [InlineData("""{ "runs/C/length": { "uniform": "2.35 m" } }""", "/spreads/runs~1C~1length", "the arcs of its bends alone take 62.8 mm")]
    [InlineData("""{ "bore": { "normal": 0.01 }, "bore": { "normal": 0.02 } }""", "/spreads/bore", "spread already")]
    [InlineData("{}", "/spreads", "1 to 10000")]
    [InlineData("[]", "/spreads", "an object of spreads")]
    public void Spread_that_makes_no_sense_is_refused_where_it_stands(string spreads, string pointer, string message) =>
        AssertFault($$"""{ "layout": {{Study.Bottle}}, "spreads": {{spreads}} }""", pointer, message);

    [Theory]
    [InlineData("samples", "99", "100 to 100000")]
    [InlineData("samples", "100001", "100 to 100000")]
    [InlineData("samples", "150.5", "a whole number")]
    [InlineData("samples", "\"150\"", "a bare number")]
    [InlineData("seed", "-1", "a whole number")]
    [InlineData("seed", "0.5", "a whole number")]
    [InlineData("answer", "\"flows\"", "one of flow, discharge")]
    [InlineData("cases", "\"all\"", "a steady flow has no cases")]
    [InlineData("sample", "100", "did you mean 'samples'")]
    public void Member_that_makes_no_sense_is_refused_where_it_stands(string member, string value, string message) =>
        AssertFault($$"""{ "layout": {{Study.Bottle}}, "{{member}}": {{value}} }""", "/" + member, message);

    [Fact]
    public void All_faults_come_at_once_those_of_the_layout_at_its_place()
    {
        var reading = Read($$"""{ "answer": "discharge", "samples": 20001, "spreads": { "bore": { "normal": 0 }, "nothing": {} }, "layout": {{Study.Plain.Replace("0.01 m", "-1 m", StringComparison.Ordinal)}} }""");

        Assert.Null(reading.Request);
        Assert.Equal(["/samples", "/spreads/bore/normal", "/spreads/nothing", "/layout/supply", "/layout/runs/0/length"], reading.Faults.Select(fault => fault.Pointer));
    }

    [Fact]
    public void Kind_that_a_layout_has_nothing_of_is_refused() =>
        AssertFault($$"""{ "layout": {{Study.Plain}}, "spreads": { "fill": { "normal": 0.01 } } }""", "/spreads/fill", "nothing of the kind fill");

    [Fact]
    public void Smooth_tube_has_no_roughness_to_be_a_part_of()
    {
        var smooth = Study.Plain.Replace("\"length\"", "\"roughness\": \"0 mm\", \"length\"", StringComparison.Ordinal);

        AssertFault($$"""{ "layout": {{smooth}}, "spreads": { "roughness": { "uniform": 0.5 } } }""", "/spreads/roughness", "a part of that is no spread");
        Assert.Single(Good($$"""{ "layout": {{smooth}}, "spreads": { "roughness": { "uniform": ["0 mm", "0.01 mm"] } } }""").Variables);
        Assert.DoesNotContain(Good($$"""{ "layout": {{smooth}} }""").Variables, variable => variable.Thing.Kind == SpreadKind.Roughness);
    }

    [Fact]
    public void Study_that_would_keep_too_many_numbers_is_refused()
    {
        var reading = ToleranceReader.Read(Encoding.UTF8.GetBytes($$"""{ "layout": {{Study.Bottle}}, "samples": 2000 }"""), new LayoutReaderOptions(), Limits with { Numbers = 10_000 }, TestContext.Current.CancellationToken);

        // 3 figures of the whole, 4 of each nozzle, 2 of the zone.
        var fault = Assert.Single(reading.Faults);
        Assert.Equal("/samples", fault.Pointer);
        Assert.Contains("13 figures, nozzle by nozzle and case by case, so that at most 769 samples", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Discharge_follows_the_first_case_unless_all_are_asked_for()
    {
        var first = Good($$"""{ "layout": {{Study.Bottle}}, "answer": "discharge" }""");

        Assert.Contains(first.Assumptions, assumption => assumption is { Pointer: "/cases", Value: "first" });
        Assert.Equal(3 * ToleranceStudy.Numbers(first), ToleranceStudy.Numbers(Good($$"""{ "layout": {{Study.Bottle}}, "answer": "discharge", "cases": "all" }""")));
    }

    [Fact]
    public void Names_with_strokes_are_found_as_in_other_paths()
    {
        var named = Study.Bottle.Replace("\"A\"", "\"a/b\"", StringComparison.Ordinal);

        Assert.Equal("runs/a~1b/length", Assert.Single(Good($$"""{ "layout": {{named}}, "spreads": { "runs/a~1b/length": { "uniform": 0.01 } } }""").Variables).Thing.Path);
    }

    [Fact]
    public void Schema_has_the_fields_and_words_that_are_read()
    {
        using var schema = JsonDocument.Parse(StudySchema.Utf8);
        var definitions = schema.RootElement.GetProperty("$defs");
        var study = definitions.GetProperty("tolerance").GetProperty("properties");

        Assert.Equal(ToleranceFields.Study.Names.Order(), study.EnumerateObject().Select(field => field.Name).Order());
        Assert.Equal(ToleranceFields.Spread.Names.Order(), definitions.GetProperty("spread").GetProperty("properties").EnumerateObject().Select(field => field.Name).Order());
        Assert.Equal(ToleranceFields.Answers.Words, study.GetProperty("answer").GetProperty("enum").EnumerateArray().Select(word => word.GetString()!));
        Assert.Equal(ToleranceFields.Cases.Words, study.GetProperty("cases").GetProperty("enum").EnumerateArray().Select(word => word.GetString()!));
    }

    static ToleranceQuestion Good(string request)
    {
        var reading = Read(request);
        Assert.Empty(reading.Faults);
        return reading.Request!;
    }

    static void AssertFault(string request, string pointer, string message)
    {
        var reading = Read(request);
        Assert.Null(reading.Request);
        Assert.Contains(reading.Faults, fault => fault.Pointer == pointer && fault.Message.Contains(message, StringComparison.Ordinal));
        Assert.All(reading.Faults, fault => Assert.Equal(pointer, fault.Pointer));
    }

    static StudyReading<ToleranceQuestion> Read(string request) =>
        ToleranceReader.Read(Encoding.UTF8.GetBytes(request), new LayoutReaderOptions(), Limits, TestContext.Current.CancellationToken);
}
