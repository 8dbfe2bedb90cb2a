using System.Globalization;
using FlowCalc.Api.Tests.Hosting;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>
/// 10 000 documents for the flow and 1 500 for the discharge; 100 000 and 20 000 where the environment says <c>FLOWCALC_LONG=1</c>, as many as <c>FLOWCALC_COUNT</c> where that is set; from the seed in <c>FLOWCALC_SEED</c> on.
/// </summary>
public sealed class HostileDocumentTests
{
    [Fact]
    public Task Every_document_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time() =>
        AreRight(new("/v1/flow", HostileDocuments.Of), 100_000, 10_000, ("Limits:FlowTime", "00:00:20"));

    [Fact]
    public Task Every_document_however_hostile_gets_a_finite_cut_list_or_a_stated_fault_in_time() =>
        AreRight(new("/v1/cut-list", HostileDocuments.OfBench), 20_000, 1_000, ("Limits:CutListTime", "00:00:20"));

    [Fact]
    public Task Every_test_however_hostile_gets_a_finite_calibration_or_a_stated_fault_in_time() =>
        AreRight(new("/v1/calibrate", HostileDocuments.OfTest), 20_000, 500, ("Limits:CalibrationTime", "00:00:20"));

    [Theory]
    [InlineData("/v1/mount", "mount")]
    [InlineData("/v1/circuit", "circuit")]
    [InlineData("/v1/upkeep?today=2026-11-25", "service")]
    public Task Every_part_of_a_document_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time(string path, string part) =>
        AreRight(new(path, seed => HostileDocuments.OfPart(seed, part)), 20_000, 500, ("Limits:MountTime", "00:00:20"), ("Limits:CircuitTime", "00:00:20"));

    [Fact]
    public async Task Every_whole_job_however_hostile_gets_a_finite_check_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.Count(few: 160, many: 8_000);
        await using var service = HostileCalls.IsLong ? Service.AsShipped() : Service.With(("Limits:CheckTime", "00:01:00"));
        var calls = new HostileCalls("/v1/check?today=2026-11-25", HostileDocuments.OfWholeJob);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        calls.AssertRight(count);
    }

    [Fact]
    public Task Every_document_of_a_gas_however_hostile_gets_a_finite_flow_or_a_stated_fault_in_time() =>
        AreRight(new("/v1/flow", HostileDocuments.OfGas), 20_000, 1_000, ("Limits:FlowTime", "00:00:20"));

    [Fact]
    public async Task Every_document_of_a_gas_however_hostile_gets_a_discharge_whose_books_balance_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.Count(few: 300, many: 4_000);
        await using var service = HostileCalls.IsLong ? Service.AsShipped() : Service.With(("Limits:DischargeTime", "00:04:00"));
        var (calls, cases) = (new HostileCalls("/v1/discharge", HostileDocuments.OfGasBottle), new CasesSeen());

        await calls.SendAsync(service, HostileCalls.FirstSeed, count, cases.Look);

        cases.Print();
        calls.AssertRight(count);
        Assert.True(cases.Answered > count / 3, $"{cases.Answered} cases of {count} documents had a discharge.");
    }

    // Each once ended in a failure: steps that became too small, a flow that did not settle, or an answer too late.
    [Theory]
    [InlineData(131)]
    [InlineData(179)]
    [InlineData(365)]
    [InlineData(415)]
    [InlineData(968)]
    [InlineData(3081)]
    [InlineData(3253)]
    [InlineData(3941)]
    public async Task Document_of_a_gas_that_once_had_no_discharge_has_one_now(int seed)
    {
        await using var service = Service.With(("Limits:DischargeTime", "00:04:00"));
        var (calls, cases) = (new HostileCalls("/v1/discharge", HostileDocuments.OfGasBottle), new CasesSeen());

        await calls.SendAsync(service, seed, 1, cases.Look);

        Assert.Empty(calls.Wrong);
        Assert.True(cases.Answered > 0);
        Assert.Empty(cases.Failures);
    }

    [Fact]
    public async Task Every_document_however_hostile_gets_a_discharge_whose_books_balance_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.Count(few: 1_500, many: 20_000);
        await using var service = HostileCalls.IsLong ? Service.AsShipped() : Service.With(("Limits:DischargeTime", "00:00:40"));
        var (calls, cases) = (new HostileCalls("/v1/discharge", HostileDocuments.OnBottle), new CasesSeen());

        await calls.SendAsync(service, HostileCalls.FirstSeed, count / 2, cases.Look);
        var early = GC.GetTotalMemory(forceFullCollection: true);
        await calls.SendAsync(service, HostileCalls.FirstSeed + count / 2, count / 2, cases.Look);
        var late = GC.GetTotalMemory(forceFullCollection: true);

        cases.Print();
        calls.AssertRight(count);
        Assert.True(cases.Answered > count / 2, $"{cases.Answered} cases of {count} documents had a discharge.");
        // Other tests in this process hold memory of their own.
        if (HostileCalls.IsLong)
            Assert.True(late < early + 20e6, string.Create(CultureInfo.InvariantCulture, $"{early:N0} bytes held after half of the documents, {late:N0} after all."));
    }

    [Fact]
    public async Task Every_document_however_hostile_gets_a_finite_coverage_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.Count(few: 400, many: 10_000);
        await using var service = Service.With(("Limits:CoverageTime", "00:01:00"));
        var calls = new HostileCalls("/v1/coverage", HostileCoverage.Of);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        calls.AssertRight(count);
    }

    [Fact]
    public Task Every_comparison_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time() =>
        AreRight(new("/v1/compare", HostileComparisons.Of), 20_000, 600, ("Limits:CompareTime", "00:01:00"));

    [Fact]
    public async Task Every_request_for_sizes_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.Count(few: 150, many: 5_000);
        await using var service = Service.With(("Limits:SizeTime", "00:01:00"), ("Limits:SizeWork", "1000"), ("Limits:SizePoints", "1000"));
        var calls = new HostileCalls("/v1/size", HostileSizings.Of);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        // A document has to make sense, and so has what is asked of it: fewer requests have an answer than documents by themselves.
        Assert.True(calls.Wrong.Count == 0, string.Join("\n\n", calls.Wrong.Take(3)));
        Assert.True(calls.Of(200) > count / 10 && calls.Of(422) > count / 5, $"{calls.Of(200)} answers, {calls.Of(422)} faults of {count}");
    }

    [Fact]
    public async Task Every_study_of_tolerances_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.Count(few: 200, many: 5_000);
        await using var service = Service.With(("Limits:ToleranceTime", "00:02:00"));
        var calls = new HostileCalls("/v1/tolerance", HostileTolerances.Of);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        Assert.True(calls.Wrong.Count == 0, string.Join("\n\n", calls.Wrong.Take(3)));
        Assert.True(calls.Of(200) > count / 10 && calls.Of(422) > count / 5, $"{calls.Of(200)} answers, {calls.Of(422)} faults of {count}");
    }

    // Beside all other tests on a small machine a request may wait for its turn; alone it keeps the usual limit.
    static async Task AreRight(HostileCalls calls, int many, int few, params (string, string)[] patience)
    {
        var count = HostileCalls.Count(few, many);
        await using var service = HostileCalls.IsLong ? Service.AsShipped() : Service.With(patience);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        calls.AssertRight(count);
    }
}
