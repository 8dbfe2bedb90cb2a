using System.Collections.Immutable;
using CsCheck;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Studies;

public class ToleranceStudyTests
{
    [Theory]
    [InlineData(StudiedAnswer.Flow, 300)]
    [InlineData(StudiedAnswer.Discharge, 120)]
    public void Answer_is_the_same_to_the_last_bit_on_any_number_of_threads(StudiedAnswer answer, int samples)
    {
        var question = Study.Ask(Study.Bottle, answer, samples) with { IsEveryCase = answer == StudiedAnswer.Discharge };

        var alone = Study.Run(question, new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, 1).ConcurrentScheduler);
        var many = Study.Run(question, new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, 7).ConcurrentScheduler);

        Assert.Equal(Flat(alone), Flat(many));
        Assert.NotEqual(Flat(alone), Flat(Study.Run(question with { Seed = 2 })));
    }

    [Fact]
    public void Verdicts_and_samples_without_an_answer_add_up_to_all()
    {
        var result = Study.Run(Study.Ask(Study.Bottle, samples: 250));

        Assert.Equal(250, result.Verdicts.Sum(verdict => verdict.Chance.Count) + result.Unsolved.Count);
        Assert.All(result.Findings, found => Assert.InRange(found.Chance.Count, 1, 250));
        Assert.NotEmpty(result.Findings);
    }

    // Between -3 and 7 °C water freezes in 30 % of the samples; strata leave no chance in it.
    [Fact]
    public void Samples_that_freeze_are_counted_and_told()
    {
        var question = Study.Ask(Study.Bottle.Replace("\"tubes\"", "\"cases\": { \"temperatures\": [\"2 °C\"] }, \"tubes\"", StringComparison.Ordinal), StudiedAnswer.Discharge, 200,
            spreads: ("temperature", thing => Distribution.Uniform(thing.Design, thing.Design - 5, thing.Design + 5)));

        var result = Study.Run(question);

        var one = Assert.Single(result.Cases);
        Assert.Equal(60, one.Failed);
        Assert.Contains("freezing point", Assert.Single(one.Failures).Reason, StringComparison.Ordinal);
        Assert.Equal(140, one.Figures.Of(Figure.Time95).Count);
        Assert.Equal(60, Assert.Single(result.Findings, found => found.Code == FindingCodes.BelowFreezing).Chance.Count);
    }

    // 13 bar of pressure come out of 14 bar at most: no sample has a flow below 13.5, all have one above.
    [Fact]
    public void Samples_without_a_flow_are_counted_and_told()
    {
        var document = Study.Bottle.Replace("\"valveKv\"", "\"burstPressure\": \"13.5 bar\", \"valveKv\"", StringComparison.Ordinal);

        var result = Study.Run(Study.Ask(document, samples: 200, spreads: ("supply/bottle/chargePressure", thing => Distribution.Uniform(thing.Design, thing.Design - 1e5, thing.Design))));

        Assert.Equal(100, result.Unsolved.Count);
        Assert.Equal(100, result.Cases[0].Failed);
        Assert.Equal(100, result.Cases[0].Figures.Of(Figure.MassFlow).Count);
        Assert.Contains("burst pressure", Assert.Single(result.Cases[0].Failures).Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Cancelled_study_stops()
    {
        using var stop = new CancellationTokenSource();
        var progress = new Stopping(stop, after: 32);

        Assert.ThrowsAny<OperationCanceledException>(() => ToleranceStudy.Run(Study.Ask(Study.Bottle, samples: 100_000), TaskScheduler.Default, progress, stop.Token));

        // Whoever was at work may finish what it had in hand.
        Assert.InRange(progress.Most, 32, 2_000);
    }

    // Counting goes another way than judging: what both find is the same. Judging gathers some places into one finding.
    [Fact]
    public void Tally_counts_what_a_judgement_finds() => Gen.Int[0, 100_000].Sample(seed =>
    {
        var layout = Documents.Read(new RandomLayout(seed).Document());
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);
        var judged = FlowFindings.Judge(layout, flow, UnitSystem.Metric, TestContext.Current.CancellationToken);
        var tally = new FindingTally();
        tally.Begin();
        FlowFindings.Tally(layout, flow, DefaultLimits.For(layout.Limits, LimitUse.Flow), tally, TestContext.Current.CancellationToken);
        tally.End();

        Assert.Equal(judged.Verdict, tally.Worst);
        var told = judged.Findings.Where(finding => finding.Code != FindingCodes.TeeBodyAssumed).ToArray();
        Assert.Equal(told.Select(finding => (finding.Code, finding.Severity)).Distinct().Order(), tally.Answers.Keys.Select(key => (key.Code, key.Severity)).Distinct().Order());
        Assert.All(told.Where(finding => finding.Where.Length > 0), finding => Assert.Contains((finding.Code, finding.Where[0], finding.Severity), tally.Answers.Keys));
    }, iter: 200);

    [Fact]
    public void Tally_of_a_discharge_counts_what_a_judgement_finds()
    {
        var layout = Documents.Read(Study.Bottle);
        // Without the band, which a study does not follow.
        var whole = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);
        var discharge = whole with { Cases = [.. whole.Cases.Select(one => one with { Band = null })] };
        var judged = DischargeFindings.Judge(layout, discharge, UnitSystem.Metric, TestContext.Current.CancellationToken);
        var tally = new FindingTally();
        tally.Begin();
        DischargeFindings.Tally(layout, discharge, DefaultLimits.For(layout.Limits, LimitUse.Discharge), tally, TestContext.Current.CancellationToken);
        tally.End();

        Assert.NotEmpty(judged.Findings);
        Assert.Equal(judged.Verdict, tally.Worst);
        Assert.Equal(judged.Findings.Select(finding => (finding.Code, finding.Severity)).Distinct().Order(), tally.Answers.Keys.Select(key => (key.Code, key.Severity)).Distinct().Order());
    }

    [Theory]
    [InlineData("HFC-227ea", """{ "volume": "5 L", "fill": "4 kg", "chargePressure": "25 bar" }""", 0.01)]
    [InlineData("carbon-dioxide", """{ "volume": "5 L", "fill": "3 kg" }""", 0.01)]
    [InlineData("IG-55", """{ "volume": "5 L", "chargePressure": "200 bar" }""", 0.01)]
    [InlineData("water", """{ "volume": "5 L", "fill": "3 kg", "chargePressure": "14 bar" }""", 0.001)]
    public void Design_of_a_study_is_the_answer_of_the_call_itself(string agent, string bottle, double part)
    {
        var document = $$"""
            { "format": 1, "agent": "{{agent}}", "supply": { "bottle": {{bottle}} }, "points": [ { "id": "S", "kind": "supply" }, { "id": "N", "kind": "nozzle", "orifice": { "diameter": "3 mm", "dischargeCoefficient": 0.8 } } ],
              "runs": [ { "id": "R", "from": "S", "to": "N", "bore": "8 mm", "length": "2 m" } ] }
            """;

        var spread = Study.Run(Study.Ask(document, StudiedAnswer.Discharge, ToleranceQuestion.LeastSamples));

        var itself = LayoutDischarge.Solve(Documents.Read(document), TestContext.Current.CancellationToken).Cases[0];
        var time = spread.Cases[0].Figures.Of(Figure.Time95);
        Assert.Equal(1, time.Design!.Value / itself.Time95!.Value.Seconds, tolerance: part);
        Assert.Equal(0, spread.Cases[0].Failed);
        Assert.InRange(time.Design.Value, time.Least!.Value, time.Greatest!.Value);
    }

    // More pressure, a wider bore, more K: more flow. Longer: less.
    [Theory]
    [InlineData("supply/bottle/chargePressure", true)]
    [InlineData("tubes/feed/bore", true)]
    [InlineData("points/near/kFactor", true)]
    [InlineData("runs/A/length", false)]
    [InlineData("tubes/feed/roughness", false)]
    public void Each_thing_moves_the_flow_its_way(string path, bool isMore)
    {
        var result = Study.Run(Study.Ask(Study.Bottle, samples: 100, spreads: (path, thing => Distribution.Uniform(thing.Design, thing.Design, 1.1 * thing.Design))));

        var flow = result.Cases[0].Figures.Of(Figure.MassFlow);
        Assert.True(isMore ? flow.Least > flow.Design : flow.Greatest < flow.Design, $"{flow}");
    }

    [Fact]
    public void Question_out_of_range_is_refused()
    {
        var question = Study.Ask(Study.Bottle);

        Assert.Throws<ArgumentOutOfRangeException>(() => Study.Run(question with { Samples = 99 }));
        Assert.Throws<ArgumentException>(() => Study.Run(question with { Variables = [] }));
        Assert.Throws<ArgumentException>(() => Study.Run(Study.Ask(Study.Plain) with { Answer = StudiedAnswer.Discharge }));
    }

    static List<object> Flat(ToleranceResult result)
    {
        List<object> all = [.. result.Findings, .. result.Verdicts.Select(verdict => (object)verdict), .. result.Sensitivities.SelectMany(one => one.Inputs), .. result.Sensitivities.Select(one => one.Statement)];
        foreach (var one in result.Cases)
            all.AddRange([one.Failed, .. Summaries(one.Figures), .. one.Nozzles.SelectMany(nozzle => Summaries(nozzle.Figures)), .. one.Zones.SelectMany(zone => Summaries(zone.Figures))]);
        return all;
    }

    static IEnumerable<object> Summaries(ImmutableArray<FigureSpread> figures) => figures.Select(figure => figure.Summary);

    sealed class Stopping(CancellationTokenSource stop, int after) : IProgress<int>
    {
        int most;

        public int Most => most;

        public void Report(int value)
        {
            for (var known = most; value > known; known = most)
                if (Interlocked.CompareExchange(ref most, value, known) == known) break;
            if (value >= after) stop.Cancel();
        }
    }
}
