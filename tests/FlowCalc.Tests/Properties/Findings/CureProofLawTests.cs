using CsCheck;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Tests.Findings;
using FlowCalc.Tests.Flows;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Properties.Findings;

/// <summary>Cures on random layouts: each is made in the document, which is read and solved again, and gives what it said.</summary>
public class CureProofLawTests
{
    [Fact]
    public void Every_cure_of_a_random_flow_gives_what_it_says_when_the_document_is_changed_so()
    {
        var (cures, clear) = (0, 0);

        Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.OneOf("0.2 bar", "3 bar", "10 bar"), Gen.Enum<UnitSystem>()).Sample((seed, pressure, units) =>
        {
            foreach (var finding in CureProof.OfFlow(new RandomLayout(seed).Document(pressure: pressure), units) ?? [])
            {
                if (finding.Cure is not { } cure) continue;
                Interlocked.Increment(ref cures);
                if (cure.Clears) Interlocked.Increment(ref clear);
            }
        }, iter: 100);

        Assert.True(cures > 100, $"Only {cures} cures were seen.");
        Assert.True(clear > 50, $"Only {clear} cures cleared their finding.");
    }

    [Fact]
    public void Every_cure_of_a_random_discharge_gives_what_it_says_when_the_document_is_changed_so()
    {
        var clear = 0;

        Gen.Select(Gen.Int[0, int.MaxValue - 1], Gen.Double[1, 4], Gen.Double[2, 30], Gen.Int[5, 60]).Sample((seed, fill, charge, latest) =>
        {
            foreach (var finding in CureProof.OfDischarge(Bottled(seed, fill, charge, latest)))
                if (finding.Cure is { Clears: true }) Interlocked.Increment(ref clear);
        }, iter: 30);

        Assert.True(clear > 8, $"Only {clear} cures cleared their finding.");
    }

    [Fact]
    public void Cures_are_the_same_however_many_threads_look_for_them()
    {
        var layout = Documents.Read(Bottled(7, 3, 14, 10));
        var discharge = LayoutDischarge.Solve(layout, TestContext.Current.CancellationToken);
        var one = new ConcurrentExclusiveSchedulerPair(TaskScheduler.Default, 1).ExclusiveScheduler;

        string Told(TaskScheduler scheduler) => string.Join('\n', DischargeFindings.JudgeWithCures(layout, discharge, UnitSystem.Metric, scheduler, TestContext.Current.CancellationToken)
            .Findings.Select(finding => $"{finding.Message} {finding.Cure?.Message} {finding.Cure?.Outcome}"));

        Assert.Equal(Told(one), Told(TaskScheduler.Default));
    }

    static string Bottled(int seed, double fill, double charge, int latest)
    {
        var bottle = FormattableString.Invariant($$"""
            { "volume": "4.2 L", "fill": "{{fill}} kg", "chargePressure": "{{charge}} bar", "workingPressure": "30 bar", "outlet": { "dipTube": { "bore": "10 mm", "length": "300 mm" }, "valveKv": "2 m3/h" } }
            """);
        return new RandomLayout(seed).Document(bottle: bottle).Replace("\"format\": 1,", $$"""
            "format": 1, "cases": { "temperatures": ["20 °C", "50 °C"] }, "requirement": { "part": 0.8, "of": "contents", "within": ["2 s", "{{latest}} s"] },
            """, StringComparison.Ordinal);
    }
}
