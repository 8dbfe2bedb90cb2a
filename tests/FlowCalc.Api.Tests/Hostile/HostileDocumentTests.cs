using System.Collections.Concurrent;
using System.Globalization;
using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>
/// 10 000 documents for the flow and 1 500 for the discharge; 100 000 and 20 000 where the environment says <c>FLOWCALC_LONG=1</c>; from the seed in <c>FLOWCALC_SEED</c> on.
/// </summary>
public sealed class HostileDocumentTests
{
    [Fact]
    public async Task Every_document_however_hostile_gets_a_finite_answer_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.IsLong ? 100_000 : 10_000;
        // Beside all other tests on a small machine a request may wait for its turn; alone it keeps the usual limit.
        await using var service = HostileCalls.IsLong ? new Service() : Service.With(("Limits:FlowTime", "00:00:20"));
        var calls = new HostileCalls("/v1/flow", HostileDocuments.Of);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        calls.AssertRight(count);
    }

    [Fact]
    public async Task Every_document_of_a_gas_however_hostile_gets_a_finite_flow_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.IsLong ? 20_000 : 2_000;
        await using var service = HostileCalls.IsLong ? new Service() : Service.With(("Limits:FlowTime", "00:00:20"));
        var calls = new HostileCalls("/v1/flow", HostileDocuments.OfGas);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count);

        calls.AssertRight(count);
    }

    [Fact]
    public async Task Every_document_of_a_gas_however_hostile_gets_a_discharge_whose_books_balance_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.IsLong ? 4_000 : 300;
        await using var service = HostileCalls.IsLong ? new Service() : Service.With(("Limits:DischargeTime", "00:01:00"));
        var (calls, failures, answered) = (new HostileCalls("/v1/discharge", HostileDocuments.OfGasBottle), new ConcurrentQueue<(int Seed, string Failure)>(), 0);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count, (seed, document, answer) =>
        {
            var bottle = ((BottleSupply)LayoutReader.Read(document).Layout!.Supply).Bottle;
            foreach (var one in answer.GetProperty("cases").EnumerateArray())
            {
                if (one.GetProperty("failure").GetString() is { } failure)
                    failures.Enqueue((seed, failure));
                else if (DischargeBooks.Wrong(one, bottle) is { } wrong)
                    return wrong;
                else
                    Interlocked.Increment(ref answered);
            }
            return null;
        });

        foreach (var kind in failures.GroupBy(one => string.Concat(one.Failure.Where(sign => !char.IsAsciiDigit(sign)))))
            TestContext.Current.TestOutputHelper?.WriteLine($"{kind.Count()} × seeds {string.Join(" ", kind.Select(one => one.Seed).Distinct().Order().Take(8))}: {kind.First().Failure}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{answered} cases answered.");
        calls.AssertRight(count);
        Assert.True(answered > count / 3, $"{answered} cases of {count} documents had a discharge.");
    }

    [Fact]
    public async Task Every_document_however_hostile_gets_a_discharge_whose_books_balance_or_a_stated_fault_in_time()
    {
        var count = HostileCalls.IsLong ? 20_000 : 1_500;
        await using var service = HostileCalls.IsLong ? new Service() : Service.With(("Limits:DischargeTime", "00:00:40"));
        var (calls, failures) = (new HostileCalls("/v1/discharge", HostileDocuments.OnBottle), new ConcurrentQueue<(int Seed, string Failure)>());
        var answered = 0;

        await calls.SendAsync(service, HostileCalls.FirstSeed, count / 2, Look);
        var early = GC.GetTotalMemory(forceFullCollection: true);
        await calls.SendAsync(service, HostileCalls.FirstSeed + count / 2, count / 2, Look);
        var late = GC.GetTotalMemory(forceFullCollection: true);

        foreach (var kind in failures.GroupBy(one => string.Concat(one.Failure.Where(sign => !char.IsAsciiDigit(sign)))))
            TestContext.Current.TestOutputHelper?.WriteLine($"{kind.Count()} × seeds {string.Join(" ", kind.Select(one => one.Seed).Distinct().Order().Take(8))}: {kind.First().Failure}");
        calls.AssertRight(count);
        Assert.True(answered > count / 2, $"{answered} cases of {count} documents had a discharge.");
        // Other tests in this process hold memory of their own.
        if (HostileCalls.IsLong)
            Assert.True(late < early + 20e6, string.Create(CultureInfo.InvariantCulture, $"{early:N0} bytes held after half of the documents, {late:N0} after all."));

        string? Look(int seed, byte[] document, JsonElement answer)
        {
            var bottle = ((BottleSupply)LayoutReader.Read(document).Layout!.Supply).Bottle;
            foreach (var one in answer.GetProperty("cases").EnumerateArray())
            {
                if (one.GetProperty("failure").GetString() is { } failure)
                    failures.Enqueue((seed, failure));
                else if (DischargeBooks.Wrong(one, bottle) is { } wrong)
                    return wrong;
                else
                    Interlocked.Increment(ref answered);
            }
            return null;
        }
    }
}
