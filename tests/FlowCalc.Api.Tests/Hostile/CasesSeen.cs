using System.Collections.Concurrent;
using System.Text.Json;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Checks every case of discharges that were sent at once, and keeps which had no answer, by document and reason.</summary>
internal sealed class CasesSeen
{
    readonly ConcurrentQueue<(int Seed, string Failure)> failures = new();

    int answered;

    /// <summary>How many cases had a discharge.</summary>
    public int Answered => answered;

    /// <summary>Why cases had none.</summary>
    public IEnumerable<string> Failures => failures.Select(one => one.Failure);

    /// <summary>Looks at one answer; what is wrong with it, or null.</summary>
    /// <param name="seed">The document's seed.</param>
    /// <param name="document">The document, UTF-8.</param>
    /// <param name="answer">What came back.</param>
    public string? Look(int seed, byte[] document, JsonElement answer)
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

    /// <summary>Prints the reasons of the cases without an answer, each with the seeds to find it again, and how many had one.</summary>
    public void Print()
    {
        // The figures of a reason differ from case to case.
        foreach (var kind in failures.GroupBy(one => string.Concat(one.Failure.Where(sign => !char.IsAsciiDigit(sign)))))
            TestContext.Current.TestOutputHelper?.WriteLine($"{kind.Count()} × seeds {string.Join(" ", kind.Select(one => one.Seed).Distinct().Order().Take(8))}: {kind.First().Failure}");
        TestContext.Current.TestOutputHelper?.WriteLine($"{answered} cases answered.");
    }
}
